package coldwright.desk;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.desk.figure.FigureColumn;
import coldwright.desk.lesson.ClassroomView;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Typography;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.ShownPage;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.LessonWork;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What must be true of the window after each act. */
final class RobotChecks {
    private static final int MOST_THREADS = 40;
    private static final int MOST_PROCESSES = 4;
    private static final int MOST_FILES = 60;

    private final DeskModel desk;
    private final Parent root;
    private final List<String> wrong = new ArrayList<>();

    private RobotChecks(RobotWindow robot) {
        this.desk = robot.window().desk();
        this.root = robot.stage().getScene().getRoot();
    }

    /** What is wrong, on the window's thread; empty if nothing is. */
    static List<String> wrong(RobotWindow robot, boolean scrolled) {
        RobotChecks checks = new RobotChecks(robot);
        robot.broken().forEach(error -> checks.wrong.add("exception: " + trace(error)));
        checks.step();
        checks.results();
        checks.focus(scrolled);
        checks.clipping();
        checks.bounded(robot);
        return checks.wrong;
    }

    private static String trace(Throwable error) {
        return error
                + " "
                + Stream.of(error.getStackTrace())
                        .filter(line -> line.getClassName().startsWith("coldwright"))
                        .limit(4)
                        .toList();
    }

    private Stream<Node> shown(String look) {
        return RobotAct.shown(root).filter(node -> node.getStyleClass().contains(look));
    }

    private void expect(boolean right, String what) {
        if (!right) {
            wrong.add(what);
        }
    }

    /** The step of the model is the one in the contents, in the text and of the figures. */
    private void step() {
        LessonModel lesson = desk.open().get();
        ShownPage page = desk.place().get();
        if (lesson == null || page != ShownPage.LESSON && page != ShownPage.CLASSROOM) {
            return;
        }
        StepModel step = lesson.inSight().get();
        if (page == ShownPage.CLASSROOM) {
            expect(
                    RobotAct.shown(root).anyMatch(ClassroomView.class::isInstance),
                    "no classroom view");
            List<String> titles = texts("step-title");
            expect(
                    titles.equals(List.of(Typography.of(step.title()))),
                    "the classroom shows " + titles + ", the step is " + step.title());
        } else {
            List<String> here =
                    shown("contents-row")
                            .filter(
                                    row ->
                                            row.getPseudoClassStates().stream()
                                                    .anyMatch(
                                                            one ->
                                                                    one.getPseudoClassName()
                                                                            .equals("here")))
                            .map(row -> ((Labeled) row.lookup(".contents-number")).getText())
                            .toList();
            expect(
                    here.isEmpty() || here.equals(List.of("" + step.number())),
                    "the contents are at " + here + ", the step is " + step.number());
            textIsAt(step);
        }
        RobotAct.shown(root)
                .filter(FigureColumn.class::isInstance)
                .forEach(
                        column -> {
                            long figures =
                                    RobotAct.shown(column)
                                            .filter(
                                                    node ->
                                                            node.getStyleClass()
                                                                    .contains("figures-now"))
                                            .flatMap(
                                                    node ->
                                                            ((Parent) node)
                                                                            .getChildrenUnmodifiable()
                                                                            .stream())
                                            .count();
                            expect(
                                    figures == step.drawn().size(),
                                    figures + " figures beside a step of " + step.drawn().size());
                        });
    }

    /** At the top of a lesson the first step counts, even below a long beginning. */
    private void textIsAt(StepModel step) {
        Optional<Node> title =
                shown("step-title")
                        .filter(
                                node ->
                                        ((Labeled) node)
                                                .getText()
                                                .equals(Typography.of(step.title())))
                        .findFirst();
        if (title.isPresent()) {
            Node view = title.get().getParent().getParent();
            Bounds bounds = view.localToScene(view.getBoundsInLocal());
            expect(
                    bounds.getMaxY() > 0
                            && (bounds.getMinY() < root.getScene().getHeight()
                                    || step.number() == 1),
                    "step " + step.number() + " is not in the text's window: " + bounds);
        }
    }

    private List<String> texts(String look) {
        return shown(look).map(node -> ((Labeled) node).getText()).toList();
    }

    /** A result that is shown is of the text that is shown, or is marked. */
    private void results() {
        for (LessonModel lesson : desk.lessons()) {
            for (SnippetModel snippet : lesson.snippets()) {
                FinishedRun run = snippet.result().lastRun().get();
                boolean marked =
                        snippet.result().changedSinceRun().get()
                                || snippet.result().outOfDate().get()
                                || snippet.phase().get() != SnippetModel.Phase.RESTING;
                if (run != null && !marked) {
                    String text = snippet.text().get();
                    RunOutcome outcome = run.outcome();
                    boolean same =
                            outcome instanceof RunOutcome.Finished finished
                                    ? finished.value().equals(RobotRunner.valueOf(text))
                                    : !(outcome instanceof RunOutcome.Rejected)
                                            || text.contains("?");
                    expect(same, "a result of another text: " + outcome + " of " + text);
                }
            }
        }
    }

    private void focus(boolean scrolled) {
        Node owner = root.getScene().getFocusOwner();
        if (owner == null) {
            return;
        }
        for (Node node = owner; node != null; node = node.getParent()) {
            expect(node.isVisible(), "the focus is on something hidden: " + owner);
        }
        Bounds bounds = owner.localToScene(owner.getBoundsInLocal());
        if (!scrolled) {
            expect(
                    bounds.getMaxX() > 0
                            && bounds.getMinX() < root.getScene().getWidth()
                            && bounds.getMaxY() > 0
                            && bounds.getMinY() < root.getScene().getHeight(),
                    "the focus is outside of the window: " + owner + " " + bounds);
        }
    }

    /** No button or label shows less than its text or reaches over the edge of the window. */
    private void clipping() {
        double width = root.getScene().getWidth();
        RobotAct.shown(root)
                .filter(Labeled.class::isInstance)
                .map(Labeled.class::cast)
                .filter(one -> one.getWidth() > 0 && one.getText() != null)
                .filter(one -> !one.getText().isEmpty())
                .forEach(
                        one -> {
                            Bounds bounds = one.localToScene(one.getLayoutBounds());
                            expect(
                                    bounds.getMaxX() <= width + 1,
                                    "over the edge: " + one.getText() + " to " + bounds.getMaxX());
                            if (one.lookup(".text") instanceof Text text && one instanceof Button) {
                                expect(
                                        text.getText().equals(one.getText())
                                                || text.getText().isEmpty(),
                                        "cut: " + one.getText() + " as " + text.getText());
                            }
                        });
    }

    /** Threads, processes and files don't become more and more. */
    private void bounded(RobotWindow robot) {
        int threads = robot.moreThreads();
        expect(threads <= MOST_THREADS, threads + " more threads");
        long processes = robot.moreProcesses();
        expect(processes <= MOST_PROCESSES, processes + " more processes");
        try (Stream<Path> files = Files.walk(robot.folder())) {
            long count = files.count();
            expect(count <= MOST_FILES, count + " files");
        } catch (IOException | UncheckedIOException e) {
            // a file is being written just now
        }
    }

    /** The files equal the page, once everything is saved. */
    static List<String> unsaved(RobotWindow robot) throws Exception {
        DeskWindow window = robot.window();
        List<LessonWork> page =
                RobotWindow.ask(
                        () ->
                                window.desk().lessons().stream()
                                        .map(window.workKeeper()::workOn)
                                        .toList());
        window.workKeeper().flush();
        List<String> wrong = new ArrayList<>();
        try (Workbook read = Workbook.open(new DataFolder(robot.folder()))) {
            for (LessonWork work : page) {
                Optional<LessonWork> file = read.load(work.key()).value();
                boolean same =
                        file.map(one -> one.steps().equals(work.steps()))
                                .orElse(work.steps().isEmpty());
                if (!same) {
                    wrong.add(
                            "the file of " + work.title() + " has " + file + ", the page " + work);
                }
            }
        }
        return wrong;
    }
}
