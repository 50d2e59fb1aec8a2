package coldwright.desk.brew;

import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.plate.PlateRoom;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.Objects;

/** The page of a cook's own batches. It fills the room that it is given and scrolls by itself. */
public final class BrewView extends ScrollPane {
    /** From this width on, in ems, the figures stand beside the recipe. */
    private static final double BESIDE_EM = 48;

    private final BrewModel brew;
    private final PlateRoom room;
    private final RecipeView recipe = new RecipeView();
    private final FiguresView figures;
    private final WishView wishes;
    private final TasteView taste;
    private final VBox left = new VBox();
    private final VBox page = new VBox();
    private boolean beside;

    /**
     * Shows the batches.
     *
     * @param brew the batches; one of them is open
     * @param room what draws plates, and how large the type is
     */
    public BrewView(BrewModel brew, PlateRoom room) {
        this.brew = brew;
        this.room = room;
        figures = new FiguresView(brew, room);
        wishes = new WishView(brew);
        taste = new TasteView(brew);
        left.getChildren().addAll(recipe, wishes, taste, new HistoryView(brew));
        getStylesheets()
                .add(
                        Objects.requireNonNull(
                                        BrewView.class.getResource("/coldwright/desk/brew.css"))
                                .toExternalForm());
        getStyleClass().add("brew");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        left.getStyleClass().add("brew-left");
        page.getStyleClass().add("brew-page");
        setContent(page);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        widthProperty().addListener(value -> arrange());
        room.emPx().addListener(value -> arrange());
        brew.open().addListener((value, was, is) -> show(is));
        show(brew.open().get());
        lay();
    }

    private void show(BatchModel batch) {
        recipe.show(batch);
        figures.show(batch);
        wishes.show(batch);
        taste.show(batch);
    }

    private void arrange() {
        boolean now = getWidth() > BESIDE_EM * room.emPx().get();
        if (now != beside) {
            beside = now;
            lay();
        }
    }

    private void lay() {
        Node title = Words.label(Say.of("batch.page"), "lesson-title");
        Node what = Words.label(Say.of("batch.what"), "brew-what");
        HBox.setHgrow(figures, Priority.ALWAYS);
        Pane both = beside ? new HBox(left, figures) : new VBox(left, figures);
        both.getStyleClass().add("brew-both");
        double em = room.emPx().get();
        left.setPrefWidth(beside ? 24 * em : USE_COMPUTED_SIZE);
        left.setMinWidth(beside ? 24 * em : 0);
        page.getChildren().setAll(title, what, files(), both);
    }

    private Node files() {
        FlowPane words =
                new FlowPane(
                        Words.button(
                                Say.of("batch.new"), () -> brew.begin(Say.of("batch.new-name"))));
        words.getStyleClass().add("brew-choices");
        return words;
    }

    private void pressed(KeyEvent event) {
        if (!event.isShortcutDown()) {
            return;
        }
        boolean again =
                event.getCode() == KeyCode.Y || event.getCode() == KeyCode.Z && event.isShiftDown();
        if (again) {
            brew.open().get().redo();
            event.consume();
        } else if (event.getCode() == KeyCode.Z) {
            brew.open().get().undo();
            event.consume();
        }
    }

    /** Puts the focus on the first amount. */
    @Override
    public void requestFocus() {
        Platform.runLater(recipe::focusFirst);
    }
}
