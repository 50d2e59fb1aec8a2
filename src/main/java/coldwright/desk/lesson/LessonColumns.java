package coldwright.desk.lesson;

import coldwright.desk.figure.FigureColumn;
import coldwright.desk.layout.PageLayout;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.desk.model.DeskModel;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

import java.util.function.Consumer;

/** The two columns of a lesson: its page, and the figures of the step in sight. */
public final class LessonColumns extends HBox {
    private final LessonView lesson;
    private final FigureColumn figures;

    public LessonColumns(
            LessonModel model,
            DeskModel desk,
            PageState state,
            AppActions appActions,
            Consumer<String> title) {
        lesson =
                new LessonView(
                        model,
                        state,
                        appActions.openLink(),
                        new AgreementView(model, desk.openLessons(), this::requestFocus),
                        desk::toggleClassroom,
                        name -> appActions.handIn().accept(model, name),
                        choice -> appActions.handout().accept(model, choice));
        figures = new FigureColumn(model.inSight().get(), state.figureSettings(), model.pins());
        HBox.setHgrow(figures, Priority.ALWAYS);
        getChildren().addAll(lesson, figures);
        WhileShown.follow(this, () -> show(model.inSight().get(), title), model.inSight());
    }

    @Override
    public void requestFocus() {
        lesson.requestFocus();
    }

    /** Sets the widths of the columns. */
    public void arrange(PageLayout now) {
        lesson.setPrefWidth(now.readingPx());
        lesson.setMinWidth(now.figuresBeside() ? now.readingPx() : 0);
        HBox.setHgrow(lesson, now.figuresBeside() ? Priority.NEVER : Priority.ALWAYS);
        TextControls.show(figures, now.figuresBeside());
    }

    private void show(StepModel step, Consumer<String> title) {
        figures.show(step);
        String words = Typography.of(step.title());
        title.accept(step.number() > 0 ? step.number() + "  " + words : words);
    }

    /**
     * The focus has moved: if it is on the page, its step is now in sight. A {@code still} page
     * must not move under the mouse.
     */
    public void follow(Node focused, boolean still) {
        if (TextControls.around(focused).anyMatch(one -> one == lesson)) {
            lesson.arriveAt(focused);
            if (!still) {
                lesson.reveal(focused);
            }
        } else if (focused != null && !still) {
            TextControls.reveal(focused, 0);
        }
    }

    public LessonView lesson() {
        return lesson;
    }
}
