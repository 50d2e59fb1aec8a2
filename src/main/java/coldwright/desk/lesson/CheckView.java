package coldwright.desk.lesson;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.CheckLine;
import coldwright.desk.lesson.model.CheckLine.State;
import coldwright.desk.lesson.model.CheckModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.lesson.CheckExpectation;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A check on the snippets above, and whether it passes. */
final class CheckView extends VBox {
    private final CheckModel model;
    private final Label summary = TextControls.label("", "check-summary");
    private final VBox lines = TextControls.styled(new VBox(), "check-lines");
    private final CollapsibleSection collapsibleSection =
            new CollapsibleSection(
                    Messages.of("check.show"), Messages.of("check.hide"), () -> lines);

    CheckView(CheckModel model) {
        this.model = model;
        getStyleClass().add("check");
        getChildren().addAll(summary, collapsibleSection);
        WhileShown.follow(this, this::refresh, model.lines());
    }

    private void refresh() {
        long open = count(State.OPEN);
        long held = count(State.PASSED);
        int all = model.lines().size();
        TextControls.show(this, all > 0 && open < all);
        boolean changed = model.onChangedText();
        summary.setText(
                held == all
                        ? (all == 1
                                ? Messages.of("check.passes")
                                : Messages.of("check.all-pass", all))
                        : Messages.of(
                                changed ? "check.some-pass.changed" : "check.some-pass",
                                held,
                                all));
        lines.getChildren().setAll(model.lines().stream().map(CheckView::line).toList());
        if (open == 0 && held < all && !changed) {
            collapsibleSection.setOpen(true);
        }
    }

    private long count(State state) {
        return model.lines().stream().filter(line -> line.state() == state).count();
    }

    private static Node line(CheckLine line) {
        Label mark =
                TextControls.styled(
                        new Label(mark(line.state())),
                        "check-mark",
                        line.state() == State.PASSED ? "passed" : "missed");
        Label expression = TextControls.label(line.expectation().expression(), "check-expression");
        String source = line.expectation().source();
        VBox words = new VBox();
        if (line.expectation() instanceof CheckExpectation.True && !source.isEmpty()) {
            words.getChildren().addAll(new CodeSentence(source, "check-reason"), expression);
        } else {
            words.getChildren().add(expression);
        }
        if (line.expectation() instanceof CheckExpectation.Value || line.state() == State.FAILED) {
            words.getChildren().add(new CodeSentence(verdict(line), "check-verdict"));
        } else if (line.state() == State.MISSED && !line.got().isEmpty()) {
            words.getChildren().add(new CodeSentence(line.got(), "check-verdict"));
        }
        if (line.expectation() instanceof CheckExpectation.Value && !source.isEmpty()) {
            words.getChildren().add(TextControls.label(source, "check-source"));
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = TextControls.styled(new HBox(mark, words), "check-line");
        return row;
    }

    private static String mark(State state) {
        return switch (state) {
            case OPEN -> Messages.of("check.open");
            case PASSED -> Messages.of("check.passed");
            case MISSED -> Messages.of("check.missed");
            case FAILED -> Messages.of("check.failed");
        };
    }

    private static String verdict(CheckLine line) {
        return switch (line.state()) {
            case OPEN -> Messages.of("check.expected", line.wanted());
            case PASSED, MISSED -> Messages.of("check.got", line.wanted(), line.got());
            case FAILED -> Messages.of("check.why", line.wanted(), line.got());
        };
    }
}
