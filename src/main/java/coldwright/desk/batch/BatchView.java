package coldwright.desk.batch;

import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.figure.FigureSettings;
import coldwright.desk.layout.KeyScrolling;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/** The page of a cook's own batches, which scrolls by itself, and the verdict below it. */
public final class BatchView extends BorderPane {
    /** From this width on, in ems, the figures are beside the recipe, otherwise right below it. */
    private static final double BESIDE_EM = 48;

    private static final double LEFT_EM = 24;

    private final BatchesModel batches;
    private final FigureSettings room;
    private final RecipeView recipe;
    private final BatchFiguresView figures;
    private final GoalView goals;
    private final TastingView taste;
    private final BatchHistoryView history;
    private final BatchComparisonView comparison;
    private final BatchVerdictView verdict = new BatchVerdictView();
    private final BatchFilesView files;
    private final Subscription opened;
    private final ScrollPane scroll = new ScrollPane();
    private final VBox later = new VBox();
    private final VBox page = new VBox();
    private final GridPane both = new GridPane();
    private boolean beside;

    /**
     * Shows the batches.
     *
     * @param brew the batches; one of them is open
     * @param openLesson opens the lesson that shows a batch's code
     * @param lessons the lessons that findings link to
     */
    public BatchView(
            BatchesModel brew,
            FigureSettings room,
            Consumer<Path> openLesson,
            CourseLink.Course lessons) {
        this.batches = brew;
        this.room = room;
        recipe = new RecipeView(brew);
        figures = new BatchFiguresView(brew, room, recipe::focusOnTaken, this::reveal, lessons);
        goals = new GoalView(brew, recipe::focusOnTaken);
        taste = new TastingView(brew);
        history = new BatchHistoryView(brew);
        comparison = new BatchComparisonView(brew, room.emPx());
        files = new BatchFilesView(brew, openLesson);
        later.getChildren().addAll(goals, taste, history);
        getStylesheets()
                .add(
                        Objects.requireNonNull(
                                        BatchView.class.getResource("/coldwright/desk/batch.css"))
                                .toExternalForm());
        getStyleClass().add("brew");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollBarPolicy.NEVER);
        later.getStyleClass().add("brew-later");
        page.getStyleClass().add("brew-page");
        both.getStyleClass().add("brew-both");
        both.getColumnConstraints().addAll(new ColumnConstraints(), new ColumnConstraints());
        RowConstraints tall = new RowConstraints();
        tall.setVgrow(Priority.ALWAYS);
        both.getRowConstraints().addAll(new RowConstraints(), tall);
        page.setMinWidth(0);
        both.setMinWidth(0);
        for (Region part : List.of(recipe, figures, later)) {
            part.setMinWidth(0);
            both.getChildren().add(part);
            GridPane.setValignment(part, VPos.TOP);
        }
        page.getChildren()
                .addAll(
                        TextControls.label(Messages.of("batch.page"), "lesson-title"),
                        TextControls.label(Messages.of("batch.what"), "brew-what"),
                        files,
                        both,
                        comparison);
        scroll.setContent(page);
        KeyScrolling.keepFocusInView(scroll, scroll::requestFocus);
        setCenter(scroll);
        setBottom(verdict);
        setOnDragOver(this::draggedOver);
        setOnDragDropped(this::dropped);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        widthProperty().addListener(value -> arrange());
        room.emPx().addListener(value -> arrange());
        room.units()
                .addListener(
                        value -> {
                            show(brew.open().get());
                            history.refresh();
                            comparison.refresh();
                        });
        opened = brew.open().subscribe((was, is) -> turnTo(is));
        show(brew.open().get());
        lay();
    }

    /** Stops following the batches, because another view takes its place. */
    public void close() {
        opened.unsubscribe();
        files.close();
        recipe.close();
        figures.close();
        goals.close();
        verdict.close();
        history.close();
        comparison.close();
    }

    /** Shows another batch: scrolls to its recipe and focuses it, unless its button was pressed. */
    private void turnTo(BatchModel batch) {
        boolean fromList = history.hasKeyboard();
        show(batch);
        if (!fromList && getScene() != null) {
            scroll.setVvalue(0);
            recipe.focusFirst();
        }
    }

    private void show(BatchModel batch) {
        recipe.show(batch);
        figures.show(batch);
        goals.show(batch);
        taste.show(batch);
        verdict.show(batch);
    }

    private void arrange() {
        beside = getWidth() > BESIDE_EM * room.emPx().get();
        lay();
    }

    /** Never moves a node to another parent: a node moved during layout appears unstyled. */
    private void lay() {
        double em = room.emPx().get();
        both.getColumnConstraints().get(0).setMinWidth(beside ? LEFT_EM * em : 0);
        both.getColumnConstraints().get(0).setPrefWidth(beside ? LEFT_EM * em : -1);
        both.getColumnConstraints().get(0).setHgrow(beside ? Priority.NEVER : Priority.ALWAYS);
        both.getColumnConstraints().get(1).setHgrow(beside ? Priority.ALWAYS : Priority.NEVER);
        GridPane.setConstraints(recipe, 0, 0);
        GridPane.setConstraints(figures, beside ? 1 : 0, beside ? 0 : 1, 1, beside ? 2 : 1);
        GridPane.setConstraints(later, 0, beside ? 1 : 2);
    }

    /** Scrolls to a part of the page, and focuses its figure if it has one. */
    private void reveal(Node part) {
        double top = page.sceneToLocal(part.localToScene(0, 0)).getY() - room.emPx().get();
        TextControls.scroll(scroll, top);
        Optional.ofNullable(part.lookup(".figure-canvas")).ifPresent(Node::requestFocus);
    }

    private void draggedOver(DragEvent event) {
        if (event.getDragboard().hasFiles() && batches.store().get().isPresent()) {
            event.acceptTransferModes(TransferMode.COPY);
        }
        event.consume();
    }

    private void dropped(DragEvent event) {
        batches.store()
                .get()
                .ifPresent(
                        shelf ->
                                event.getDragboard()
                                        .getFiles()
                                        .forEach(
                                                file ->
                                                        shelf.files()
                                                                .open(file.toPath(), batches)));
        event.setDropCompleted(true);
        event.consume();
    }

    private void pressed(KeyEvent event) {
        if (!event.isShortcutDown()) {
            return;
        }
        boolean again =
                event.getCode() == KeyCode.Y || event.getCode() == KeyCode.Z && event.isShiftDown();
        if (again) {
            batches.open().get().redo();
            event.consume();
        } else if (event.getCode() == KeyCode.Z) {
            batches.open().get().undo();
            event.consume();
        }
    }

    /** Puts the focus on the first amount. */
    @Override
    public void requestFocus() {
        if (recipe.getScene() != null) {
            recipe.focusFirst();
        } else {
            recipe.sceneProperty()
                    .addListener(
                            new InvalidationListener() {
                                @Override
                                public void invalidated(Observable scene) {
                                    recipe.sceneProperty().removeListener(this);
                                    Platform.runLater(recipe::focusFirst);
                                }
                            });
        }
    }
}
