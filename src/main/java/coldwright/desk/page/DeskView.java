package coldwright.desk.page;

import coldwright.desk.batch.BatchView;
import coldwright.desk.batch.CourseLink;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.PageLayout;
import coldwright.desk.layout.PageStyles;
import coldwright.desk.lesson.AppActions;
import coldwright.desk.lesson.ClassroomView;
import coldwright.desk.lesson.HelpPane;
import coldwright.desk.lesson.LessonColumns;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.lesson.PageState;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.model.ShownPage;
import coldwright.figure.UnitConversion;
import coldwright.paint.style.FigureTheme;
import coldwright.words.Words;
import coldwright.workbook.settings.MassUnit;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.TemperatureUnit;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.util.Subscription;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** The whole window: contents, the open lesson, and the figures of the step in sight. */
public final class DeskView extends StackPane {
    private final DeskModel desk;
    private final PageState state;
    private final AppActions actions;
    private final PageFrame frame;
    private final LessonPages pages = new LessonPages();
    private final NoticeView notice;
    private final TermPopover popover;
    private final List<Subscription> subscriptions = new ArrayList<>();
    private LessonColumns lessonColumns;
    private ClassroomView classroom;
    private BatchView batchView;
    private NotesWindow notes;

    /** Whether the mouse button is down: what it presses must not move away under it. */
    private boolean pressed;

    public DeskView(
            DeskModel desk,
            PreferencesModel settings,
            RenderContext renderContext,
            AppActions appActions,
            Optional<DeskView> former) {
        former.map(one -> one.pages).ifPresent(pages::follow);
        this.desk = desk;
        this.actions = appActions;
        this.state = new PageState(renderContext, settings);
        PageStyles.loadFonts();
        getStylesheets().addAll(PageStyles.sheets());
        getStyleClass().add("desk");
        notice = new NoticeView(desk);
        frame =
                new PageFrame(
                        new ContentsView(desk, settings, this::goTo, appActions.openFile()),
                        notice);
        popover = new TermPopover(desk, this, state.emPx());
        getChildren().add(frame);
        follow(desk.place(), is -> turnPage());
        follow(desk.open(), is -> turnPage());
        follow(settings.preferences(), is -> dress());
        follow(widthProperty(), is -> arrange());
        follow(heightProperty(), is -> Optional.ofNullable(classroom).ifPresent(one -> arrange()));
        state.coveredPx()
                .bind(
                        Bindings.when(desk.notice().isEmpty())
                                .then(0)
                                .otherwise(notice.heightProperty()));
        dress();
        turnPage();
        listen();
        DroppedFiles.on(this, desk::openFile);
    }

    private <T> void follow(ObservableValue<T> value, Consumer<T> action) {
        subscriptions.add(value.subscribe((was, is) -> action.accept(is)));
    }

    /** Stops following everything, because another view takes its place. */
    public void close() {
        subscriptions.forEach(Subscription::unsubscribe);
        notice.close();
        if (batchView != null) {
            batchView.close();
        }
        exitPage();
    }

    /** Applies the learner's theme, units and type size. */
    private void dress() {
        Preferences all = state.settings().preferences().get();
        state.figureSettings()
                .theme()
                .set(
                        switch (all.theme()) {
                            case LIGHT -> FigureTheme.LIGHT;
                            case DARK -> FigureTheme.DARK;
                            case CONTRAST -> FigureTheme.CONTRAST;
                        });
        boolean fahrenheit = all.temperatureUnit() == TemperatureUnit.F;
        boolean ounces = all.massUnit() == MassUnit.OZ;
        UnitConversion units = new UnitConversion(fahrenheit, ounces);
        Words.show(new Words.Units(units::unit, units::value));
        state.figureSettings().units().set(units);
        String theme = all.theme().name().toLowerCase(Locale.ROOT);
        getStyleClass().setAll("root", "desk", theme);
        arrange();
    }

    private void listen() {
        new KeyBindings(
                        state.settings(),
                        actions.openFile(),
                        desk::toggleClassroom,
                        actions.fullScreen(),
                        frame::focusContents,
                        this::escape,
                        this::back,
                        this::turn)
                .listen(this);
        sceneProperty().flatMap(Scene::focusOwnerProperty).subscribe(this::focused);
        addEventFilter(
                MouseEvent.MOUSE_PRESSED,
                event -> {
                    pressed = true;
                    popover.pressed(event.getTarget());
                });
        addEventFilter(MouseEvent.MOUSE_RELEASED, event -> pressed = false);
    }

    private void arrange() {
        double width = Math.max(480, getWidth());
        int percent = state.settings().typePercent();
        double em =
                classroom == null
                        ? PageStyles.emPx(percent, width)
                        : PageStyles.classroomEmPx(percent, getWidth(), getHeight());
        keepFocusInView();
        setStyle("-fx-font-size: " + em + "px;");
        state.emPx().set(em);
        if (classroom != null) {
            frame.withoutContents();
            classroom.arrange(getWidth(), em);
            StackPane.setMargin(notice, new Insets(0, 0, ClassroomView.STRIP_EM * em, 0));
            return;
        }
        StackPane.setMargin(notice, Insets.EMPTY);
        PageLayout now = PageLayout.of(width, em);
        state.figureSettings().figuresBeside().set(now.figuresBeside());
        if (desk.place().get() == ShownPage.HOME) {
            frame.withoutContents();
        } else {
            frame.withContents(now, em);
        }
        if (lessonColumns != null) {
            lessonColumns.arrange(now);
        }
    }

    /** The action of Alt and Left: the way back from a page that is only read. */
    private Optional<Runnable> back() {
        return switch (desk.place().get()) {
            case TRIALS -> Optional.of(desk::goHome);
            case GLOSSARY -> Optional.of(desk::leaveGlossary);
            case CLASSROOM -> Optional.of(desk::toggleClassroom);
            default -> Optional.empty();
        };
    }

    /**
     * Closes a term's meaning, or else contents that cover the page, or else help, or goes back.
     */
    private void escape() {
        if (!popover.close() && !frame.closeContents() && !HelpPane.dismissWithin(frame)) {
            back().ifPresent(Runnable::run);
        }
    }

    private void exitPage() {
        popover.close();
        lessonColumns = null;
        classroom = null;
        if (notes != null) {
            notes.close();
            notes = null;
        }
    }

    private void turnPage() {
        Optional<LessonView> former = Optional.ofNullable(lessonColumns).map(LessonColumns::lesson);
        boolean fromClassroom = classroom != null;
        exitPage();
        LessonModel is = desk.open().get();
        boolean inClassroom = desk.place().get() == ShownPage.CLASSROOM && is != null;
        state.classroom().set(inClassroom);
        if (inClassroom) {
            classroom =
                    new ClassroomView(
                            is, state, actions.openLink(), this::openNotes, desk::toggleClassroom);
            frame.show(classroom);
            arrange();
            return;
        }
        switch (is == null && desk.place().get() == ShownPage.LESSON
                ? ShownPage.HOME
                : desk.place().get()) {
            case SETTINGS ->
                    show(new SettingsView(state.settings(), actions.archiveWork()), "settings");
            case GLOSSARY ->
                    show(new GlossaryView(desk, actions.openLink(), desk.wantedTerm()), "glossary");
            case BATCH -> {
                if (batchView == null) {
                    batchView =
                            new BatchView(
                                    desk.batches(),
                                    state.figureSettings(),
                                    desk::openOwn,
                                    name ->
                                            desk.openLessons()
                                                    .named(name)
                                                    .map(
                                                            one ->
                                                                    new CourseLink(
                                                                            one.lesson().title(),
                                                                            () -> desk.open(one))));
                }
                show(batchView, "batch.page");
            }
            case TRIALS -> show(new KitchenTrialsView(desk, actions.openLink()), "trials");
            case LESSON -> {
                openChanged(is, former);
                if (fromClassroom) {
                    goTo(is.inSight().get());
                }
            }
            default -> show(new HomeView(desk, state, actions.openFile()), "home");
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

    private void show(Node one, String titleKey) {
        arrange();
        frame.show(one);
        frame.title(Messages.of(titleKey));
        one.requestFocus();
    }

    private void openChanged(LessonModel is, Optional<LessonView> former) {
        pages.retain(desk.lessons());
        Optional<LessonColumns> kept = pages.of(is);
        lessonColumns =
                kept.orElseGet(
                        () ->
                                pages.keep(
                                        is,
                                        new LessonColumns(is, desk, state, actions, frame::title)));
        frame.show(lessonColumns);
        arrange();
        lessonColumns.requestFocus();
        Optional<LessonView.Place> earlier =
                former.filter(one -> one.model() != is && one.model().key().equals(is.key()))
                        .map(LessonView::place)
                        .or(() -> kept.isEmpty() ? pages.formerPlace(is) : Optional.empty());
        if (earlier.isPresent()) {
            lessonColumns.lesson().scrollTo(earlier.get());
        } else if (kept.isEmpty() && is.inSight().get().number() > 1) {
            goTo(is.inSight().get());
        }
    }

    private void turn(int by) {
        if (lessonColumns != null) {
            desk.open().get().stepBy(by).ifPresent(this::goTo);
        }
    }

    private void goTo(StepModel step) {
        frame.closeContents();
        lessonColumns.lesson().goTo(step);
    }

    /** What has the focus and is in view stays there when the page is laid out again. */
    private void keepFocusInView() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        if (owner != null && TextControls.isSeen(owner, this)) {
            AfterFrame.after(1, () -> focused(owner.isFocused() ? owner : null));
        }
    }

    private void focused(Node focused) {
        if (lessonColumns != null) {
            lessonColumns.follow(focused, pressed);
        } else if (focused != null && !pressed) {
            TextControls.reveal(focused, state.coveredPx().get());
        }
    }
}
