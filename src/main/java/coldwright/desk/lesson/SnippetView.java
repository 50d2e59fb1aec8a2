package coldwright.desk.lesson;

import coldwright.bench.FinishedRun;
import coldwright.desk.code.CodeEditor;
import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.SnippetModel.Phase;
import coldwright.desk.lesson.model.SnippetResult;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.PreferencesModel;
import coldwright.figure.UnitConversion;
import coldwright.words.Words;
import coldwright.workbook.settings.BenchLimit;
import coldwright.workbook.settings.CodeView;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** A snippet: its editor, its buttons, and the outcome of its run. */
final class SnippetView extends VBox {
    private static final KeyCombination RUN_KEYS =
            new KeyCodeCombination(KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN);
    private static final Duration TICK = Duration.millis(100);

    private final SnippetModel model;
    private final CodeEditor editor;
    private final AsidesView asides;
    private final HelpPane help;
    private final Button run;
    private final Button stop;
    private final Button reset;
    private final Button fromHere;
    private final Button what;
    private final PreferencesModel settings;
    private final ObservableValue<UnitConversion> units;
    private final OutcomeView outcome;
    private final HBox asks = asks();
    private double askAtS;
    private final Label status = TextControls.styled(new Label(), "status");
    private final Timeline clock = new Timeline(new KeyFrame(TICK, event -> showTime()));

    /** Shows a snippet; {@code fromHere} runs it and all below it. */
    SnippetView(
            SnippetModel model,
            PreferencesModel settings,
            ObservableValue<UnitConversion> units,
            Runnable fromHere) {
        this.units = units;
        this.model = model;
        this.settings = settings;
        this.fromHere = TextControls.command("snippet.from-here", fromHere);
        this.editor = new CodeEditor(model.text(), model::suggest);
        this.asides = new AsidesView(editor);
        this.help = new HelpPane(model, editor);
        this.what = TextControls.command("snippet.help", help::turn);
        this.run = TextControls.command("snippet.run", model::run);
        this.stop = TextControls.command("snippet.stop", model::stop);
        this.reset = TextControls.command("snippet.reset", model::reset);
        getStyleClass().add("snippet");
        editor.setAccessibleText(Messages.of("snippet.spoken"));
        editor.addEventFilter(
                KeyEvent.KEY_PRESSED,
                event -> {
                    if (RUN_KEYS.match(event)) {
                        event.consume();
                        model.run();
                    } else if (event.getCode() == KeyCode.F1) {
                        event.consume();
                        help.turn();
                    }
                });
        clock.setCycleCount(Animation.INDEFINITE);
        VBox paper =
                TextControls.styled(
                        new VBox(dials(), editor, asides, help, foot(), asks), "snippet-paper");
        outcome = new OutcomeView(model, editor::goToLine);
        getChildren().addAll(model.snippet().given() ? folded(paper) : paper, outcome);
        WhileShown.follow(this, this::showCode, settings.preferences());
        SnippetResult result = model.result();
        WhileShown.follow(this, this::showPhase, model.phase());
        WhileShown.follow(this, () -> editor.mark(result.problems()), result.lastRun());
        WhileShown.follow(
                this,
                this::showTime,
                model.progress(),
                result.changedSinceRun(),
                result.outOfDate(),
                model.onlyForBelow(),
                result.lastRun());
    }

    /**
     * An exercise without dials is shown with its code, because it could not be solved otherwise.
     */
    private void showCode() {
        CodeView view = settings.preferences().get().codeView();
        boolean needed = !model.snippet().solution().isEmpty() && model.dials().isEmpty();
        boolean shown = view != CodeView.NONE || needed;
        asides.fold(shown && view != CodeView.ALL);
        TextControls.show(editor, shown);
        TextControls.show(what, shown);
    }

    /** Asks after a while whether to continue a run. */
    private HBox asks() {
        Label words = TextControls.label("", "runs-long-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        Button on = TextControls.command("snippet.let-it-run", this::letItRun);
        HBox box = TextControls.row("runs-long", words, on);
        TextControls.show(box, false);
        return box;
    }

    private void letItRun() {
        askAtS = 2 * model.runningS();
        stop.requestFocus();
        TextControls.show(asks, false);
    }

    private void askIfLong() {
        boolean asking = model.phase().get() == Phase.RUNNING && model.runningS() >= askAtS;
        if (asking && !asks.isVisible()) {
            long soFar = Math.round(model.runningS());
            ((Label) asks.getChildren().get(0)).setText(Messages.of("snippet.runs-long", soFar));
        }
        TextControls.show(asks, asking);
    }

    /** The dials, in the order of the lines that declare them. */
    private VBox dials() {
        VBox box = TextControls.styled(new VBox(), "dials");
        Runnable refill =
                () -> {
                    box.getChildren()
                            .setAll(
                                    model.dials().stream()
                                            .map(dial -> new DialView(dial, units))
                                            .toList());
                    TextControls.show(box, !model.dials().isEmpty());
                };
        WhileShown.follow(box, refill, model.dials());
        return box;
    }

    private static CollapsibleSection folded(VBox paper) {
        return new CollapsibleSection(
                Messages.of("snippet.given.show"), Messages.of("snippet.given.hide"), () -> paper);
    }

    OutcomeView outcome() {
        return outcome;
    }

    private FlowPane foot() {
        run.getStyleClass().add("run-word");
        WhileShown.follow(reset, () -> allowReset(model.edited().get()), model.edited());
        what.getStyleClass().add("quiet-word");
        FlowPane foot =
                TextControls.styled(
                        new FlowPane(run, stop, reset, fromHere, what, status), "snippet-buttons");
        fromHere.getStyleClass().add("quiet-word");
        return foot;
    }

    private void showPhase() {
        if (model.phase().get() != Phase.RUNNING) {
            askAtS = settings.limit(BenchLimit.ASK_AFTER_SECONDS);
        }
        if (model.phase().get() == Phase.RESTING) {
            clock.stop();
            handOver(stop, run);
        } else {
            clock.play();
            handOver(run, stop);
        }
        showTime();
    }

    private void allowReset(boolean edited) {
        reset.setDisable(!edited && !reset.isFocused());
        if (!edited && reset.isFocused()) {
            editor.requestFocus();
            reset.setDisable(true);
        }
    }

    /** Moves the focus from a button before it is disabled, or the focus would go far away. */
    private static void handOver(Button from, Button to) {
        to.setDisable(false);
        if (from.isFocused()) {
            to.requestFocus();
        }
        from.setDisable(true);
    }

    private void showTime() {
        if (getScene() == null) {
            clock.stop();
            return;
        }
        if (model.result().turning() && model.phase().get() == Phase.RESTING) {
            return;
        }
        askIfLong();
        status.setText(
                switch (model.phase().get()) {
                    case WAITING -> model.progress().get();
                    case RUNNING -> running();
                    case RESTING -> rested();
                });
    }

    private String running() {
        String time = Words.shown(1, model.runningS()) + "\u00A0s";
        String first = model.progress().get();
        return first.isEmpty() ? Messages.of("snippet.runs", time) : first + ", " + time;
    }

    private String rested() {
        FinishedRun run = model.result().lastRun().get();
        if (run == null) {
            return model.onlyForBelow().get() ? Messages.of("snippet.for-below") : "";
        }
        if (model.result().changedSinceRun().get()) {
            return Messages.of("snippet.changed");
        }
        if (model.result().outOfDate().get()) {
            return Messages.of("snippet.out-of-date");
        }
        return run.outcome().finished()
                ? Messages.of(
                        "snippet.ran", Words.shown(2, run.elapsed().toNanos() / 1e9) + "\u00A0s")
                : Messages.of("snippet.not-to-end");
    }
}
