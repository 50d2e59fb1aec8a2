package coldwright.desk.lesson;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.run.PrintedOutput;

import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/** The outcome of a run: printed text, value, errors. */
final class OutcomeView extends VBox {
    private final SnippetModel model;
    private final IntConsumer goToLine;
    private final VBox printed = TextControls.styled(new VBox(), "printed");
    private final VBox ending = TextControls.styled(new VBox(), "ending");
    private PrintedOutput shown = PrintedOutput.NOTHING;
    private Optional<ShownEnding> ended = Optional.empty();

    /** The ending that is shown, so that the same one isn't rebuilt while a dial turns. */
    private record ShownEnding(RunOutcome outcome, boolean silent) {}

    OutcomeView(SnippetModel model, IntConsumer goToLine) {
        this.model = model;
        this.goToLine = goToLine;
        getStyleClass().add("outcome");
        getChildren().addAll(printed, ending);
        showThis();
        WhileShown.follow(this, this::showPrinted, model.result().printed());
        WhileShown.follow(this, this::showEnding, model.result().lastRun(), model.phase());
    }

    private void showPrinted() {
        PrintedOutput text = model.result().printed().get();
        if (text.equals(shown)) {
            return;
        }
        boolean headOnly = shown.isHead() && text.isHead();
        shown = text;
        if (headOnly) {
            ((Label) printed.getChildren().get(0)).setText(text.head());
            return;
        }
        printed.getChildren().clear();
        if (!text.head().isEmpty()) {
            Label head = TextControls.literal(text.head(), "printed-text");
            head.setAccessibleRole(AccessibleRole.TEXT);
            printed.getChildren().add(head);
        }
        if (text.linesLeft() > 0) {
            String more =
                    text.linesLeft() == 1
                            ? Messages.of("outcome.show-one")
                            : Messages.of("outcome.show-more", text.linesLeft());
            printed.getChildren()
                    .add(
                            new CollapsibleSection(
                                    more, Messages.of("outcome.hide"), () -> whole(text)));
        }
        if (text.cut()) {
            printed.getChildren().add(TextControls.label(Messages.of("outcome.cut"), "note"));
        }
        showThis();
    }

    private static Node whole(PrintedOutput text) {
        TextArea area = TextControls.styled(new TextArea(text.all()), "printed-whole");
        area.setEditable(false);
        area.setPrefRowCount(20);
        return area;
    }

    private void showEnding() {
        FinishedRun run = model.result().lastRun().get();
        boolean resting = model.phase().get() == SnippetModel.Phase.RESTING;
        Optional<ShownEnding> now =
                run == null || !resting
                        ? Optional.empty()
                        : Optional.of(new ShownEnding(run.outcome(), isSilent(run)));
        if (now.equals(ended)) {
            return;
        }
        ended = now;
        ending.getChildren().setAll(run == null || !resting ? List.of() : ending(run));
        showThis();
    }

    private void showThis() {
        TextControls.show(printed, !printed.getChildren().isEmpty());
        TextControls.show(ending, !ending.getChildren().isEmpty());
        TextControls.show(this, printed.isManaged() || ending.isManaged());
    }

    private List<Node> ending(FinishedRun run) {
        RunOutcome outcome = run.outcome();
        if (outcome instanceof RunOutcome.Finished finished) {
            return finished(finished, run);
        }
        if (outcome instanceof RunOutcome.Rejected rejected) {
            return rejected.problems().stream().map(this::problem).toList();
        }
        if (outcome instanceof RunOutcome.Threw threw) {
            return List.of(problem(threw.problem()));
        }
        return List.of(
                new CodeSentence(
                        model.ending(), outcome instanceof RunOutcome.Stopped ? "note" : "error"));
    }

    private static boolean isSilent(FinishedRun run) {
        return run.printed().isEmpty() && run.exhibits().isEmpty();
    }

    private static List<Node> finished(RunOutcome.Finished finished, FinishedRun run) {
        if (finished.gaveValue()) {
            return List.of(TextControls.literal(finished.value(), "value"));
        }
        return isSilent(run)
                ? List.of(TextControls.label(Messages.of("outcome.nothing"), "note"))
                : List.of();
    }

    private Node problem(SnippetProblem problem) {
        VBox box = TextControls.styled(new VBox(), "problem");
        CodeSentence words = new CodeSentence(problem.words(), "error");
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = TextControls.styled(new HBox(words), "problem-row");
        if (problem.line() > 0) {
            Button line =
                    TextControls.button(
                            Messages.of("outcome.line", problem.line()),
                            () -> goToLine.accept(problem.line()));
            line.getStyleClass().add("problem-line");
            row.getChildren().add(0, line);
        }
        box.getChildren().add(row);
        if (!problem.compilerWords().isBlank()) {
            box.getChildren()
                    .add(
                            new CollapsibleSection(
                                    Messages.of("outcome.java"),
                                    Messages.of("outcome.java.hide"),
                                    () ->
                                            TextControls.literal(
                                                    problem.compilerWords(), "compiler-words")));
        }
        return box;
    }
}
