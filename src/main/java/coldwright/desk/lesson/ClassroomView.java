package coldwright.desk.lesson;

import coldwright.desk.figure.FigureColumn;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;

import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

import java.util.List;
import java.util.function.Consumer;

/** A lesson in classroom view: large type, one step at a time, its figures beside it. */
public final class ClassroomView extends BorderPane {
    /** Height of the strip with the buttons, ems. */
    public static final double STRIP_EM = 2.4;

    /** The strip's type is so large at most that this many ems of it fit into the width. */
    private static final double STRIP_WIDTH_EM = 60;

    private static final double LEAST_STRIP_PX = 14;

    /** A lesson's long title is cut, or it would push a button into a second line. */
    private static final double WHERE_EM = 15;

    private final LessonModel lesson;
    private final PageState state;
    private final Consumer<String> openLink;
    private final ScrollPage page = new ScrollPage("classroom-page");
    private final FigureColumn figures;

    private final FlowPane strip;
    private final Label where = TextControls.styled(new Label(), "strip-here");
    private final Button back;
    private final Button next;

    /** Shows a lesson; the type of {@code state} is already large. */
    public ClassroomView(
            LessonModel lesson,
            PageState state,
            Consumer<String> openLink,
            Runnable notes,
            Runnable leave) {
        this.lesson = lesson;
        this.state = state;
        this.openLink = openLink;
        getStyleClass().add("classroom");
        figures = new FigureColumn(lesson.inSight().get(), state.figureSettings(), lesson.pins());
        HBox.setHgrow(figures, Priority.ALWAYS);
        HBox both = new HBox(page, figures);
        setCenter(both);
        back = TextControls.command("classroom.previous", () -> turn(-1));
        next = TextControls.command("classroom.next", () -> turn(1));
        strip =
                new FlowPane(
                        back,
                        next,
                        where,
                        TextControls.command("classroom.notes", notes),
                        TextControls.command("classroom.exit", leave));
        strip.setRowValignment(VPos.BASELINE);
        strip.getStyleClass().addAll("strip", "classroom-strip");
        setBottom(strip);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        WhileShown.follow(this, () -> show(lesson.inSight().get()), lesson.inSight());
    }

    /** Sets the widths of the columns. */
    public void arrange(double widthPx, double emPx) {
        double measure = Math.min(34 * emPx, widthPx * 0.56);
        boolean beside = widthPx - measure > 16 * emPx;
        state.figureSettings().figuresBeside().set(beside);
        page.setPrefWidth(beside ? measure : widthPx);
        page.setMinWidth(beside ? measure : 0);
        HBox.setHgrow(page, beside ? Priority.NEVER : Priority.ALWAYS);
        TextControls.show(figures, beside);
        // large type leaves the strip in one line
        double fitting = Math.max(LEAST_STRIP_PX, widthPx / STRIP_WIDTH_EM);
        double stripPx = Math.min(emPx, fitting);
        strip.setStyle("-fx-font-size: " + stripPx + "px;");
        where.setMaxWidth(WHERE_EM * stripPx);
    }

    private void pressed(KeyEvent event) {
        boolean typing = event.getTarget() instanceof javafx.scene.control.TextInputControl;
        boolean inCode = event.getTarget() instanceof coldwright.desk.code.CodeEditor;
        int by =
                switch (event.getCode()) {
                    case PAGE_DOWN -> 1;
                    case PAGE_UP -> -1;
                    default -> 0;
                };
        if (by != 0 && !typing && !inCode) {
            event.consume();
            turn(by);
        }
    }

    private void turn(int by) {
        lesson.stepBy(by).ifPresent(lesson::arrive);
    }

    private void show(StepModel step) {
        StepView view =
                new StepView(step, List.of(), state, lesson.pins(), openLink, lesson::runFrom);
        page.column().getChildren().setAll(view);
        page.setVvalue(0);
        figures.show(step);
        int all = lesson.steps().size();
        int at = lesson.steps().indexOf(step);
        back.setDisable(at <= 0);
        next.setDisable(at == all - 1);
        where.setText(
                Messages.of(
                        "classroom.where",
                        Typography.of(lesson.lesson().title()),
                        Math.max(1, at + 1),
                        all));
        view.requestFocus();
    }
}
