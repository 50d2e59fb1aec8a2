package coldwright.desk.page;

import coldwright.desk.batch.BatchView;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.layout.PageLayout;
import coldwright.desk.layout.PageState;
import coldwright.desk.layout.PageStyles;
import coldwright.desk.lesson.AppActions;
import coldwright.desk.lesson.ClassroomView;
import coldwright.desk.lesson.HelpPane;
import coldwright.desk.lesson.LessonColumns;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.model.ShownPage;
import coldwright.desk.prose.Typography;

import javafx.beans.value.ChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The whole window: contents, the open lesson, and the figures of the step in sight. */
public final class DeskView extends StackPane {
    private final DeskModel desk;
    private final PageState state;
    private final AppActions actions;
    private final BorderPane frame = new BorderPane();
    private final StackPane page = new StackPane();
    private final ContentsView contents;
    private final Label here = new Label();
    private final HBox strip;
    private final Map<LessonModel, LessonColumns> spreads = new HashMap<>();
    private final ChangeListener<StepModel> sight = (value, was, is) -> stepInSight(is);
    private LessonColumns lessonColumns;
    private ClassroomView classroom;
    private BatchView batchView;
    private NotesWindow notes;

    /** Whether the mouse button is down: what it presses must not move away under it. */
    private boolean pressed;

    /**
     * Makes the window's content.
     *
     * @param desk its model
     * @param settings the learner's preferences
     * @param renderContext draws figures
     * @param appActions actions outside the window's content
     */
    public DeskView(
            DeskModel desk,
            PreferencesModel settings,
            RenderContext renderContext,
            AppActions appActions) {
        this.desk = desk;
        this.actions = appActions;
        this.state = new PageState(renderContext, settings);
        PageStyles.loadFonts();
        getStylesheets().addAll(PageStyles.sheets());
        getStyleClass().add("desk");
        contents = new ContentsView(desk, this::goTo, appActions.openFile());
        strip = strip();
        page.getStyleClass().add("page");
        frame.setCenter(page);
        frame.setBottom(new NoticeView(desk));
        getChildren().add(frame);
        desk.place().addListener(value -> turnPage());
        desk.open().addListener(value -> turnPage());
        ThemeBinder.put(settings.preferences().get(), this, state.room());
        settings.preferences()
                .addListener((value, was, is) -> ThemeBinder.put(is, this, state.room()));
        desk.typeSize().percent().addListener(value -> arrange());
        widthProperty().addListener(value -> arrange());
        heightProperty()
                .addListener(value -> Optional.ofNullable(classroom).ifPresent(is -> arrange()));
        arrange();
        turnPage();
        listenToKeys();
        DroppedFiles.on(this, desk::openFile);
    }

    private void listenToKeys() {
        KeyBindings keys =
                new KeyBindings(
                        desk.typeSize(),
                        actions.openFile(),
                        desk::toggleClassroom,
                        actions.fullScreen(),
                        this::focusContents,
                        this::escape,
                        this::back,
                        this::turn);
        sceneProperty()
                .addListener(
                        (value, was, is) -> {
                            is.addEventFilter(KeyEvent.KEY_PRESSED, keys::pressed);
                            is.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> pressed = true);
                            is.addEventFilter(MouseEvent.MOUSE_RELEASED, event -> pressed = false);
                            is.focusOwnerProperty()
                                    .addListener((owner, before, now) -> follow(now));
                        });
    }

    private HBox strip() {
        here.getStyleClass().add("strip-here");
        HBox.setHgrow(here, Priority.ALWAYS);
        HBox box =
                new HBox(TextControls.button(Messages.of("contents"), this::toggleContents), here);
        box.setAlignment(Pos.BASELINE_LEFT);
        box.getStyleClass().add("strip");
        return box;
    }

    private void arrange() {
        double em =
                classroom == null
                        ? PageStyles.USUAL_EM_PX * desk.typeSize().percent().get() / 100
                        : PageStyles.classroomEmPx(getWidth(), getHeight());
        setStyle("-fx-font-size: " + em + "px;");
        state.emPx().set(em);
        if (classroom != null) {
            frame.setLeft(null);
            frame.setTop(null);
            classroom.arrange(getWidth(), em);
            return;
        }
        PageLayout now = PageLayout.of(Math.max(320, getWidth()), em);
        state.figuresBeside().set(now.figuresBeside());
        contents.setPrefWidth(now.contentsBeside() ? now.contentsPx() : 17 * em);
        contents.setMaxWidth(contents.getPrefWidth());
        if (desk.place().get() == ShownPage.HOME) {
            frame.setLeft(null);
            frame.setTop(null);
        } else {
            putContents(now.contentsBeside());
        }
        if (lessonColumns != null) {
            lessonColumns.arrange(now);
        }
    }

    private void putContents(boolean beside) {
        if (beside) {
            closeContents();
            frame.setLeft(contents);
            frame.setTop(null);
        } else if (frame.getTop() == null) {
            frame.setLeft(null);
            frame.setTop(strip);
        }
    }

    private void toggleContents() {
        if (!closeContents()) {
            page.getChildren().add(contents);
            StackPane.setAlignment(contents, Pos.TOP_LEFT);
            contents.focusHere();
        }
    }

    /** Closes the contents if they cover the page. Returns whether they did. */
    private boolean closeContents() {
        boolean covered = page.getChildren().remove(contents);
        if (covered && lessonColumns != null) {
            lessonColumns.lesson().requestFocus();
        }
        return covered;
    }

    /** The action of Alt and Left: from the kitchen trials it leads home. */
    private Optional<Runnable> back() {
        return desk.place().get() == ShownPage.TRIALS
                ? Optional.of(desk::goHome)
                : Optional.empty();
    }

    /** Closes the contents if they cover the page, or else help, or else goes back. */
    private void escape() {
        if (!closeContents() && !HelpPane.dismissWithin(page)) {
            back().ifPresent(Runnable::run);
        }
    }

    private void turnPage() {
        Optional<LessonView> former = Optional.ofNullable(lessonColumns).map(LessonColumns::lesson);
        if (lessonColumns != null) {
            lessonColumns.lesson().model().inSight().removeListener(sight);
            lessonColumns = null;
        }
        if (classroom != null) {
            classroom.exit();
            classroom = null;
        }
        LessonModel is = desk.open().get();
        boolean forARoom = desk.place().get() == ShownPage.CLASSROOM && is != null;
        state.classroom().set(forARoom);
        if (forARoom) {
            classroom =
                    new ClassroomView(
                            is, state, actions.openLink(), this::openNotes, desk::toggleClassroom);
            page.getChildren().setAll(classroom);
            arrange();
        } else if (desk.place().get() == ShownPage.SETTINGS) {
            show(
                    new SettingsView(desk, state.settings(), actions.archiveWork()),
                    Messages.of("settings"));
        } else if (desk.place().get() == ShownPage.BATCH) {
            if (batchView == null) {
                batchView = new BatchView(desk.batches(), state.room(), desk::openOwn);
            }
            show(batchView, Messages.of("batch.page"));
        } else if (desk.place().get() == ShownPage.TRIALS) {
            show(new KitchenTrialsView(desk, actions.openLink()), Messages.of("trials"));
        } else if (desk.place().get() == ShownPage.HOME || is == null) {
            show(new HomeView(desk, state, actions.openFile()), Messages.of("home"));
        } else {
            openChanged(is, former);
        }
    }

    private void openNotes() {
        if (notes != null) {
            notes.close();
        }
        notes =
                new NotesWindow(
                        desk.open().get(), actions.openLink(), getScene().getWindow(), this);
        notes.open();
    }

    private void show(Node one, String title) {
        arrange();
        page.getChildren().setAll(one);
        here.setText(title);
        one.requestFocus();
    }

    private void openChanged(LessonModel is, Optional<LessonView> former) {
        spreads.keySet().retainAll(desk.lessons());
        boolean anew = !spreads.containsKey(is);
        lessonColumns =
                spreads.computeIfAbsent(is, one -> new LessonColumns(one, desk, state, actions));
        page.getChildren().setAll(lessonColumns);
        is.inSight().addListener(sight);
        stepInSight(is.inSight().get());
        arrange();
        lessonColumns.lesson().requestFocus();
        Optional<LessonView> written =
                former.filter(one -> one.model() != is && one.model().key().equals(is.key()));
        if (written.isPresent()) {
            lessonColumns.lesson().scrollAsFarAs(written.get());
        } else if (anew && is.inSight().get().number() > 1) {
            goTo(is.inSight().get());
        }
    }

    private void stepInSight(StepModel step) {
        lessonColumns.showFiguresOf(step);
        String title = Typography.of(step.title());
        here.setText(step.number() > 0 ? step.number() + "  " + title : title);
    }

    private void focusContents() {
        if (frame.getLeft() == contents) {
            contents.focusHere();
        } else {
            toggleContents();
        }
    }

    private void turn(int by) {
        if (lessonColumns != null) {
            lessonColumns.stepBy(by).ifPresent(this::goTo);
        }
    }

    private void goTo(StepModel step) {
        closeContents();
        lessonColumns.lesson().goTo(step);
    }

    private void follow(Node focused) {
        if (lessonColumns != null) {
            lessonColumns.follow(focused, pressed);
        }
    }
}
