package coldwright.desk.page;

import coldwright.desk.brew.BrewView;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.LessonModel;
import coldwright.desk.model.Place;
import coldwright.desk.model.Settings;
import coldwright.desk.model.StepModel;
import coldwright.desk.plate.Pens;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

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
    private final Deeds deeds;
    private final BorderPane frame = new BorderPane();
    private final StackPane page = new StackPane();
    private final ContentsView contents;
    private final Label here = new Label();
    private final HBox strip;
    private final Map<LessonModel, Spread> spreads = new HashMap<>();
    private final ChangeListener<StepModel> sight = (value, was, is) -> stepInSight(is);
    private Spread spread;
    private WorkshopView workshop;
    private BrewView brew;
    private NotesWindow notes;

    /** Whether the mouse's button is down: what it presses must not move away under it. */
    private boolean pressed;

    /**
     * Lays the desk.
     *
     * @param desk what it shows
     * @param settings what the learner has set
     * @param pens what figures are drawn with
     * @param deeds what the program does outside of its window
     */
    public DeskView(DeskModel desk, Settings settings, Pens pens, Deeds deeds) {
        this.desk = desk;
        this.deeds = deeds;
        this.state = new PageState(pens, settings);
        Looks.loadFonts();
        getStylesheets().addAll(Looks.sheets());
        getStyleClass().add("desk");
        contents = new ContentsView(desk, this::goTo, deeds.openFile());
        strip = strip();
        page.getStyleClass().add("page");
        frame.setCenter(page);
        frame.setBottom(new NoticeView(desk));
        getChildren().add(frame);
        desk.place().addListener(value -> turnPage());
        desk.open().addListener(value -> turnPage());
        Dress.put(settings.preferences().get(), this, state.room());
        settings.preferences().addListener((value, was, is) -> Dress.put(is, this, state.room()));
        desk.typeSize().percent().addListener(value -> arrange());
        widthProperty().addListener(value -> arrange());
        heightProperty()
                .addListener(
                        value -> {
                            if (workshop != null) {
                                arrange();
                            }
                        });
        arrange();
        turnPage();
        listenToKeys(deeds.openFile());
        Dropped.on(this, desk::openFile);
    }

    private void listenToKeys(Runnable openFile) {
        Keys keys =
                new Keys(
                        desk.typeSize(),
                        openFile,
                        desk::turnWorkshop,
                        deeds.fullScreen(),
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
        HBox box = new HBox(Words.button(Say.of("contents"), this::toggleContents), here);
        box.setAlignment(Pos.BASELINE_LEFT);
        box.getStyleClass().add("strip");
        return box;
    }

    private void arrange() {
        double em =
                workshop == null
                        ? Looks.USUAL_EM_PX * desk.typeSize().percent().get() / 100
                        : Looks.workshopEmPx(getWidth(), getHeight());
        setStyle("-fx-font-size: " + em + "px;");
        state.emPx().set(em);
        if (workshop != null) {
            frame.setLeft(null);
            frame.setTop(null);
            workshop.arrange(getWidth(), em);
            return;
        }
        Arrangement now = Arrangement.of(Math.max(320, getWidth()), em);
        state.figuresBeside().set(now.figuresBeside());
        contents.setPrefWidth(now.contentsBeside() ? now.contentsPx() : 17 * em);
        contents.setMaxWidth(contents.getPrefWidth());
        putContents(now.contentsBeside());
        if (spread != null) {
            spread.arrange(now);
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

    /** Puts the contents away if they lie over the page; says whether they did. */
    private boolean closeContents() {
        boolean lay = page.getChildren().remove(contents);
        if (lay && spread != null) {
            spread.lesson().requestFocus();
        }
        return lay;
    }

    /** What Alt and Left do: from the kitchen trials they lead home. */
    private Optional<Runnable> back() {
        return desk.place().get() == Place.TRIALS ? Optional.of(desk::goHome) : Optional.empty();
    }

    /**
     * Puts the contents away if they lie over the page, else help; if none is shown, leads back.
     */
    private void escape() {
        if (!closeContents() && !HelpSlip.putAwayWithin(page)) {
            back().ifPresent(Runnable::run);
        }
    }

    private void turnPage() {
        Optional<LessonView> former = Optional.ofNullable(spread).map(Spread::lesson);
        if (spread != null) {
            spread.lesson().model().inSight().removeListener(sight);
            spread = null;
        }
        if (workshop != null) {
            workshop.leave();
            workshop = null;
        }
        LessonModel is = desk.open().get();
        boolean forARoom = desk.place().get() == Place.WORKSHOP && is != null;
        state.workshop().set(forARoom);
        if (forARoom) {
            workshop =
                    new WorkshopView(
                            is, state, deeds.openLink(), this::openNotes, desk::turnWorkshop);
            page.getChildren().setAll(workshop);
            arrange();
        } else if (desk.place().get() == Place.SETTINGS) {
            show(new SettingsView(desk, state.settings(), deeds.putAway()), Say.of("settings"));
        } else if (desk.place().get() == Place.BATCH) {
            if (brew == null) {
                brew = new BrewView(desk.brew(), state.room(), desk::openOwn);
            }
            show(brew, Say.of("batch.page"));
        } else if (desk.place().get() == Place.TRIALS) {
            show(new TrialsView(desk, deeds.openLink()), Say.of("trials"));
        } else if (desk.place().get() == Place.HOME || is == null) {
            show(new HomeView(desk, deeds.openFile()), Say.of("home"));
        } else {
            openChanged(is, former);
        }
    }

    private void openNotes() {
        if (notes != null) {
            notes.close();
        }
        notes = new NotesWindow(desk.open().get(), deeds.openLink(), getScene().getWindow(), this);
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
        spread = spreads.computeIfAbsent(is, one -> new Spread(one, desk, state, deeds));
        page.getChildren().setAll(spread);
        is.inSight().addListener(sight);
        stepInSight(is.inSight().get());
        arrange();
        spread.lesson().requestFocus();
        Optional<LessonView> written =
                former.filter(one -> one.model() != is && one.model().key().equals(is.key()));
        if (written.isPresent()) {
            spread.lesson().standAsFarDownAs(written.get());
        } else if (anew && is.inSight().get().number() > 1) {
            goTo(is.inSight().get());
        }
    }

    private void stepInSight(StepModel step) {
        spread.showFiguresOf(step);
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
        if (spread != null) {
            spread.stepBy(by).ifPresent(this::goTo);
        }
    }

    private void goTo(StepModel step) {
        closeContents();
        spread.lesson().goTo(step);
    }

    private void follow(Node focused) {
        if (spread != null) {
            spread.follow(focused, pressed);
        }
    }
}
