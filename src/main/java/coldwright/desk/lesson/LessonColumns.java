package coldwright.desk.lesson;

import coldwright.desk.figure.FigureColumn;
import coldwright.desk.layout.PageLayout;
import coldwright.desk.layout.PageState;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.Optional;

/** A lesson's two columns: its page, and the figures of the step in sight. */
public final class LessonColumns extends HBox {
    private final LessonModel model;
    private final LessonView lesson;
    private final FigureColumn figures;

    /**
     * Lays them side by side.
     *
     * @param model the lesson
     * @param desk where it lies
     * @param state what its page shares with the others
     * @param appActions what the program does outside of its window
     */
    public LessonColumns(
            LessonModel model, DeskModel desk, PageState state, AppActions appActions) {
        this.model = model;
        lesson =
                new LessonView(
                        model,
                        state,
                        appActions.openLink(),
                        agreement(desk),
                        desk::toggleClassroom,
                        name -> appActions.handIn().accept(model, name),
                        choice -> appActions.handout().accept(model, choice));
        figures = new FigureColumn(model.inSight().get(), state.room(), model.pins());
        HBox.setHgrow(figures, Priority.ALWAYS);
        getChildren().addAll(lesson, figures);
    }

    private Node agreement(DeskModel desk) {
        Optional<Runnable> whileWritten =
                Optional.of(model)
                        .filter(LessonModel::isFollowed)
                        .map(one -> () -> leaving(() -> desk.agreeWhileWritten(one)));
        return new VBox(
                new AgreementView(
                        model.gate(), () -> leaving(() -> desk.agree(model)), whileWritten),
                new LessonFollowingView(model, () -> leaving(() -> desk.doneWriting(model))));
    }

    /** What is pressed goes away by it: the page takes the keys, or they would go far down. */
    private void leaving(Runnable action) {
        lesson.requestFocus();
        action.run();
    }

    /** Shares out the width. */
    public void arrange(PageLayout now) {
        lesson.setPrefWidth(now.readingPx());
        lesson.setMinWidth(now.figuresBeside() ? now.readingPx() : 0);
        HBox.setHgrow(lesson, now.figuresBeside() ? Priority.NEVER : Priority.ALWAYS);
        TextControls.show(figures, now.figuresBeside());
    }

    /** Shows the figures of a step. */
    public void showFiguresOf(StepModel step) {
        figures.show(step);
    }

    /** The step that stands so many below the one in sight, or above it. */
    public Optional<StepModel> stepBy(int by) {
        int to = model.steps().indexOf(model.inSight().get()) + by;
        boolean there = to >= 0 && to < model.steps().size();
        return there ? Optional.of(model.steps().get(to)) : Optional.empty();
    }

    /**
     * Something has the keys now: if it stands on the page, its step is the one in sight.
     *
     * @param focused what has them; null if nothing
     * @param still whether the page must not move under the mouse
     */
    public void follow(Node focused, boolean still) {
        for (Node node = focused; node != null; node = node.getParent()) {
            if (node == lesson) {
                lesson.arriveAt(focused);
                if (!still) {
                    lesson.reveal(focused);
                }
                return;
            }
        }
    }

    public LessonView lesson() {
        return lesson;
    }
}
