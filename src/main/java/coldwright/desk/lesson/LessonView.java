package coldwright.desk.lesson;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.TextControls;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A lesson as one long page, and which of its steps is in sight. */
public final class LessonView extends ScrollPage {
    /** The step at this share of the height is the one in sight. */
    private static final double EYE = 0.35;

    private static final double GAP_PX = 12;

    /** A step stays in sight after a jump to it until the page is scrolled by so much. */
    private static final double ANCHOR_PX = 30;

    private final LessonModel model;
    private final PageState state;
    private final Consumer<String> openLink;
    private final VBox column = column();
    private final Region endSpace = TextControls.styled(new Region(), "end-space");
    private final List<StepView> steps = new ArrayList<>();

    private boolean lookDue;
    private boolean scrolled;
    private Optional<StepView> kept = Optional.empty();
    private double keptY;
    private double anchoredAt = Double.NaN;

    /** What had the focus in view at the last look, and how far the page was scrolled. */
    private Node seenFocus;

    private double seenAt;

    LessonView(
            LessonModel model,
            PageState state,
            Consumer<String> openLink,
            Node agreement,
            Runnable workshop,
            Consumer<String> handIn,
            Consumer<HandoutRequest> handout) {
        super("lesson");
        this.model = model;
        this.state = state;
        this.openLink = openLink;
        column.getChildren()
                .add(
                        new LessonFrontView(
                                model, agreement, viewOf(model.opening()), workshop, handout));
        column.getChildren().add(new HandInView(handIn));
        endSpace.prefHeightProperty().bind(heightProperty().multiply(1 - EYE));
        column.getChildren().add(endSpace);
        setNext();
        vvalueProperty()
                .addListener(
                        value -> {
                            scrolled = true;
                            lookSoon();
                        });
        heightProperty().addListener(value -> lookSoon());
        column.heightProperty().addListener(value -> lookSoon());
    }

    /** Adds the steps one by one, so that the first can be read before the last is there. */
    private void setNext() {
        if (steps.size() < model.steps().size()) {
            StepView view = viewOf(model.steps().get(steps.size()));
            steps.add(view);
            column.getChildren().add(column.getChildren().size() - 2, view);
            AfterFrame.after(1, this::setNext);
        }
    }

    /** Updates the step in sight after the layout. */
    private void lookSoon() {
        if (!lookDue) {
            lookDue = true;
            Platform.runLater(
                    () -> {
                        lookDue = false;
                        look();
                    });
        }
    }

    private StepView viewOf(StepModel step) {
        return new StepView(
                step, model.faultsOf(step), state, model.pins(), openLink, model::runFrom);
    }

    /** Scrolls a step to the top of the page. */
    public void goTo(StepModel step) {
        while (steps.size() < model.steps().size()) {
            setNext();
        }
        applyCss();
        layout();
        steps.stream()
                .filter(view -> view.model() == step)
                .findFirst()
                .ifPresent(
                        view ->
                                Platform.runLater(
                                        () -> {
                                            scrollTo(view);
                                            model.arrive(step);
                                            view.requestFocus();
                                            scrollAgain(view, anchoredAt);
                                        }));
    }

    private void scrollTo(StepView view) {
        TextControls.scroll(this, topOf(view) - GAP_PX);
        anchoredAt = offset();
    }

    /** A page that was just opened has its height only after a frame, if nothing else scrolls. */
    private void scrollAgain(StepView view, double anchor) {
        AfterFrame.after(
                1,
                () -> {
                    if (Double.compare(anchoredAt, anchor) == 0) {
                        scrollTo(view);
                    }
                });
    }

    /**
     * What is read: a step, none at the lesson's top, and how far below its top the page begins.
     */
    public record Place(Optional<StepModel> step, double belowPx) {}

    /** Where the page is now. */
    public Place place() {
        double down = offset();
        double eye = down + EYE * getViewportBounds().getHeight();
        Optional<StepView> reached =
                steps.stream()
                        .filter(view -> view.getHeight() > 0 && topOf(view) <= eye)
                        .reduce((one, other) -> other);
        return new Place(reached.map(StepView::model), down - reached.map(this::topOf).orElse(0.0));
    }

    /**
     * Scrolls to a place of an earlier page of this lesson, of its previous text or in another
     * language: same distance from the top of the same step, so that new lines above it move
     * nothing.
     */
    public void scrollTo(Place place) {
        while (steps.size() < model.steps().size()) {
            setNext();
        }
        Runnable scroll =
                () -> {
                    getScene().getRoot().applyCss();
                    getScene().getRoot().layout();
                    double top = place.step().flatMap(this::sameStep).map(this::topOf).orElse(0.0);
                    TextControls.scroll(this, top + place.belowPx());
                    anchoredAt = offset();
                };
        scroll.run();
        AfterFrame.after(1, scroll);
    }

    private Optional<StepView> sameStep(StepModel was) {
        return steps.stream()
                .filter(view -> view.model().title().equals(was.title()))
                .findFirst()
                .or(() -> steps.stream().limit(was.number()).reduce((one, other) -> other));
    }

    /** Scrolls a node into view, on whichever page it is: a lesson's, or the classroom view's. */
    static void reveal(Node node, Node within) {
        if (node.isVisible()) {
            TextControls.around(within)
                    .filter(LessonView.class::isInstance)
                    .map(LessonView.class::cast)
                    .findFirst()
                    .ifPresentOrElse(
                            lesson -> lesson.reveal(node), () -> TextControls.reveal(node, 0));
        }
    }

    /** The step that contains a node is now in sight. */
    void arriveAt(Node node) {
        stepOf(node).ifPresent(model::arrive);
    }

    private static Optional<StepModel> stepOf(Node node) {
        return TextControls.around(node)
                .filter(StepView.class::isInstance)
                .map(view -> ((StepView) view).model())
                .filter(step -> step.number() > 0)
                .findFirst();
    }

    /**
     * Scrolls a node into view, unless it is visible. At the lesson's top or end, outside of all
     * steps, the step in sight follows the page.
     */
    public void reveal(Node node) {
        if (node == this) {
            return;
        }
        TextControls.reveal(this, node, state.coveredPx().get());
        seenFocus = node;
        seenAt = offset();
        anchoredAt = stepOf(node).isPresent() ? offset() : Double.NaN;
        lookSoon();
    }

    private double offset() {
        return TextControls.offset(this);
    }

    private double topOf(StepView view) {
        return getContent().sceneToLocal(view.localToScene(0, 0)).getY();
    }

    private void look() {
        double seen = getViewportBounds().getHeight();
        if (getScene() == null || seen < 2 || steps.isEmpty() || steps.get(0).getHeight() < 1) {
            return;
        }
        keepInPlace();
        keepFocusInView();
        StepView sight = inSight();
        boolean shown =
                topOf(sight) < offset() + seen && topOf(sight) + sight.getHeight() > offset();
        boolean anchored = shown && Math.abs(offset() - anchoredAt) < ANCHOR_PX;
        StepView at = anchored ? sight : stepAt(offset(), offset() + EYE * seen);
        kept = Optional.of(at).filter(step -> topOf(step) <= offset() + EYE * seen);
        keptY = topOf(at) - offset();
        if (anchored) {
            return;
        }
        anchoredAt = Double.NaN;
        if (at.model() != model.inSight().get()) {
            model.arrive(at.model());
        }
        boolean readToItsEnd = topOf(at) + at.getHeight() <= offset() + seen;
        if (readToItsEnd && offset() > 0) {
            at.model().markRead();
        }
    }

    /**
     * What is above has become longer or shorter: the step that was read stays where it was. While
     * the lesson's top is in view, that stays instead, and what opens there pushes the steps down.
     */
    private void keepInPlace() {
        boolean anchored = !Double.isNaN(anchoredAt);
        boolean topInView = offset() < topOf(steps.get(0));
        kept.filter(step -> !topInView && !scrolled)
                .filter(step -> Math.abs(topOf(step) - offset() - keptY) > 1)
                .ifPresent(
                        step -> {
                            TextControls.scroll(this, topOf(step) - keptY);
                            anchoredAt = anchored ? offset() : Double.NaN;
                        });
        scrolled = false;
    }

    /** A result above has pushed what has the focus out of view: the page follows it. */
    private void keepFocusInView() {
        Node focused = getScene().getFocusOwner();
        boolean inPage = TextControls.around(focused).anyMatch(one -> one == column);
        boolean pushed = focused == seenFocus && Math.abs(offset() - seenAt) < GAP_PX;
        if (inPage && pushed && !TextControls.isSeen(focused, this)) {
            reveal(focused);
        }
        seenFocus = inPage && TextControls.isSeen(focused, this) ? focused : null;
        seenAt = offset();
    }

    private StepView inSight() {
        return steps.stream()
                .filter(view -> view.model() == model.inSight().get())
                .findFirst()
                .orElse(steps.get(0));
    }

    /** The first step that starts between the page's top and the eye line, or spans both. */
    private StepView stepAt(double top, double eye) {
        StepView spanning = steps.get(0);
        for (StepView view : steps) {
            if (view.getHeight() > 0 && topOf(view) <= eye) {
                spanning = view;
                if (topOf(view) >= top) {
                    return view;
                }
            }
        }
        return spanning;
    }

    public LessonModel model() {
        return model;
    }
}
