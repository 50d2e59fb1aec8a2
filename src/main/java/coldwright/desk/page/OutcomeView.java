package coldwright.desk.page;

import coldwright.bench.Outcome;
import coldwright.bench.Problem;
import coldwright.bench.Run;
import coldwright.desk.model.Printed;
import coldwright.desk.model.SnippetModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

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

/** What came of a run: what it printed, what it gave, what is wrong. */
final class OutcomeView extends VBox {
    private final SnippetModel model;
    private final IntConsumer goToLine;
    private final VBox printed = new VBox();
    private final VBox ending = new VBox();
    private Printed shown = Printed.NOTHING;
    private Optional<Ended> ended = Optional.empty();

    /** An ending that is shown, so that the same one is not set anew while a dial turns. */
    private record Ended(Outcome outcome, boolean silent) {}

    OutcomeView(SnippetModel model, IntConsumer goToLine) {
        this.model = model;
        this.goToLine = goToLine;
        getStyleClass().add("outcome");
        printed.getStyleClass().add("printed");
        ending.getStyleClass().add("ending");
        getChildren().addAll(printed, ending);
        model.came().printed().addListener((value, was, is) -> showPrinted());
        model.came().lastRun().addListener((value, was, is) -> showEnding());
        model.phase().addListener((value, was, is) -> showEnding());
        showPrinted();
        showEnding();
        showThis();
    }

    private void showPrinted() {
        Printed text = model.came().printed().get();
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
            Label head = Words.label(text.head(), "printed-text");
            head.setAccessibleRole(AccessibleRole.TEXT);
            printed.getChildren().add(head);
        }
        if (text.linesLeft() > 0) {
            String more =
                    text.linesLeft() == 1
                            ? Say.of("outcome.show-one")
                            : Say.of("outcome.show-more", String.valueOf(text.linesLeft()));
            printed.getChildren().add(new Folded(more, Say.of("outcome.fold"), () -> whole(text)));
        }
        if (text.cut()) {
            printed.getChildren().add(Words.label(Say.of("outcome.cut"), "note"));
        }
        showThis();
    }

    private static Node whole(Printed text) {
        TextArea area = new TextArea(text.all());
        area.setEditable(false);
        area.setPrefRowCount(20);
        area.getStyleClass().add("printed-whole");
        return area;
    }

    private void showEnding() {
        Run run = model.came().lastRun().get();
        boolean resting = model.phase().get() == SnippetModel.Phase.RESTING;
        Optional<Ended> now =
                run == null || !resting
                        ? Optional.empty()
                        : Optional.of(new Ended(run.outcome(), isSilent(run)));
        if (now.equals(ended)) {
            return;
        }
        ended = now;
        ending.getChildren().setAll(run == null || !resting ? List.of() : ending(run));
        showThis();
    }

    private void showThis() {
        Words.show(printed, !printed.getChildren().isEmpty());
        Words.show(ending, !ending.getChildren().isEmpty());
        Words.show(this, printed.isManaged() || ending.isManaged());
    }

    private List<Node> ending(Run run) {
        Outcome outcome = run.outcome();
        if (outcome instanceof Outcome.Finished finished) {
            return finished(finished, run);
        }
        if (outcome instanceof Outcome.Rejected rejected) {
            return rejected.problems().stream().map(this::problem).toList();
        }
        if (outcome instanceof Outcome.Threw threw) {
            return List.of(problem(threw.problem()));
        }
        return List.of(
                new Sentence(
                        model.ending(), outcome instanceof Outcome.Stopped ? "note" : "trouble"));
    }

    private static boolean isSilent(Run run) {
        return run.printed().isEmpty() && run.exhibits().isEmpty();
    }

    private static List<Node> finished(Outcome.Finished finished, Run run) {
        if (!finished.value().isEmpty() && !finished.type().endsWith("PrintStream")) {
            return List.of(Words.label(finished.value(), "value"));
        }
        return isSilent(run) ? List.of(Words.label(Say.of("outcome.nothing"), "note")) : List.of();
    }

    private Node problem(Problem problem) {
        VBox box = new VBox();
        box.getStyleClass().add("problem");
        Sentence words = new Sentence(problem.words(), "trouble");
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(words);
        row.getStyleClass().add("problem-row");
        if (problem.line() > 0) {
            Button line =
                    Words.button(
                            Say.of("outcome.line", String.valueOf(problem.line())),
                            () -> goToLine.accept(problem.line()));
            line.getStyleClass().add("problem-line");
            row.getChildren().add(0, line);
        }
        box.getChildren().add(row);
        if (!problem.compilerWords().isBlank()) {
            box.getChildren()
                    .add(
                            new Folded(
                                    Say.of("outcome.java"),
                                    Say.of("outcome.java.fold"),
                                    () -> Words.label(problem.compilerWords(), "compiler-words")));
        }
        return box;
    }
}
