package coldwright.desk.page;

import coldwright.desk.model.CheckModel;
import coldwright.desk.model.Expected;
import coldwright.desk.model.Expected.State;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.lesson.Expectation;

import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What the snippets above should give, and whether they do. */
final class CheckView extends VBox {
    private final CheckModel model;
    private final Label summary = Words.label("", "check-summary");
    private final VBox lines = new VBox();
    private final Folded folded =
            new Folded(Say.of("check.show"), Say.of("check.fold"), () -> lines);

    CheckView(CheckModel model) {
        this.model = model;
        getStyleClass().add("check");
        lines.getStyleClass().add("check-lines");
        getChildren().addAll(summary, folded);
        model.lines().addListener((ListChangeListener<Expected>) change -> refresh());
        refresh();
    }

    private void refresh() {
        long open = count(State.OPEN);
        long held = count(State.HELD);
        int all = model.lines().size();
        Words.show(this, all > 0 && open < all);
        boolean changed = model.onChangedText();
        summary.setText(
                held == all
                        ? (all == 1 ? Say.of("check.holds") : Say.of("check.all-hold", number(all)))
                        : Say.of(
                                changed ? "check.some-hold.changed" : "check.some-hold",
                                number(held),
                                number(all)));
        lines.getChildren().setAll(model.lines().stream().map(CheckView::line).toList());
        if (open == 0 && held < all && !changed) {
            folded.setOpen(true);
        }
    }

    private static String number(long count) {
        return String.valueOf(count);
    }

    private long count(State state) {
        return model.lines().stream().filter(line -> line.state() == state).count();
    }

    private static Node line(Expected line) {
        Label mark = new Label(mark(line.state()));
        mark.getStyleClass().addAll("check-mark", line.state() == State.HELD ? "held" : "missed");
        Label expression = Words.label(line.expectation().expression(), "check-expression");
        String source = line.expectation().source();
        VBox words = new VBox();
        if (line.expectation() instanceof Expectation.True && !source.isEmpty()) {
            words.getChildren().addAll(new Sentence(source, "check-reason"), expression);
        } else {
            words.getChildren().add(expression);
        }
        if (line.expectation() instanceof Expectation.Value || line.state() == State.FAILED) {
            words.getChildren().add(new Sentence(verdict(line), "check-verdict"));
        }
        if (line.expectation() instanceof Expectation.Value && !source.isEmpty()) {
            words.getChildren().add(Words.label(source, "check-source"));
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(mark, words);
        row.getStyleClass().add("check-line");
        return row;
    }

    private static String mark(State state) {
        return switch (state) {
            case OPEN -> Say.of("check.open");
            case HELD -> Say.of("check.held");
            case MISSED -> Say.of("check.missed");
            case FAILED -> Say.of("check.failed");
        };
    }

    private static String verdict(Expected line) {
        return switch (line.state()) {
            case OPEN -> Say.of("check.expected", line.wanted());
            case HELD, MISSED -> Say.of("check.got", line.wanted(), line.got());
            case FAILED -> Say.of("check.why", line.wanted(), line.got());
        };
    }
}
