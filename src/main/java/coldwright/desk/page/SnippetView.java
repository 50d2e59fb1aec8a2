package coldwright.desk.page;

import coldwright.bench.Run;
import coldwright.desk.code.CodeSlip;
import coldwright.desk.model.DialModel;
import coldwright.desk.model.Settings;
import coldwright.desk.model.SnippetModel;
import coldwright.desk.model.SnippetModel.Phase;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.figure.InUnits;
import coldwright.workbook.settings.BenchLimit;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
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

import java.util.Locale;

/** A snippet as a slip on the page: its text, its words to press, and what came of it. */
final class SnippetView extends VBox {
    private static final KeyCombination RUN_KEYS =
            new KeyCodeCombination(KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN);
    private static final Duration TICK = Duration.millis(100);

    private final SnippetModel model;
    private final CodeSlip slip;
    private final HelpSlip help;
    private final Button run;
    private final Button stop;
    private final Button reset;
    private final Button fromHere;
    private final Settings settings;
    private final ObservableValue<InUnits> units;
    private final OutcomeView outcome;
    private final HBox asks = asks();
    private double askAtS;
    private final Label status = new Label();
    private final Timeline clock = new Timeline(new KeyFrame(TICK, event -> tellTime()));
    private long begunNanos;

    /**
     * Shows a snippet.
     *
     * @param model the snippet
     * @param settings says after how long the page asks
     * @param units in which dials tell their values too
     * @param fromHere runs it and all below it
     */
    SnippetView(
            SnippetModel model,
            Settings settings,
            ObservableValue<InUnits> units,
            Runnable fromHere) {
        this.units = units;
        this.model = model;
        this.settings = settings;
        this.fromHere = Words.button(Say.of("snippet.from-here"), fromHere);
        this.slip = new CodeSlip(model.text(), model::suggest);
        this.help = new HelpSlip(model, slip);
        this.run = Words.button(Say.of("snippet.run"), model::run);
        this.stop = Words.button(Say.of("snippet.stop"), model::stop);
        this.reset = Words.button(Say.of("snippet.reset"), model::reset);
        getStyleClass().add("snippet");
        slip.setAccessibleText(Say.of("snippet.spoken"));
        slip.addEventFilter(
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
        VBox paper = new VBox(slip, help, dials(), foot(), asks);
        paper.getStyleClass().add("slip");
        outcome = new OutcomeView(model, slip::goToLine);
        getChildren().addAll(model.snippet().given() ? folded(paper) : paper, outcome);
        model.phase().addListener((value, was, is) -> phaseChanged(is));
        model.progress().addListener(value -> tellTime());
        model.came().changedSinceRun().addListener(value -> tellTime());
        model.came().outOfDate().addListener(value -> tellTime());
        model.onlyForBelow().addListener(value -> tellTime());
        model.came()
                .lastRun()
                .addListener(
                        (value, was, is) -> {
                            slip.mark(model.came().problems());
                            tellTime();
                        });
        phaseChanged(model.phase().get());
        slip.mark(model.came().problems());
    }

    /** After a while the page asks whether a run shall go on. */
    private HBox asks() {
        Label words = Words.label("", "asks-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        Button on = Words.button(Say.of("snippet.let-it-run"), this::letItRun);
        HBox box = new HBox(words, on);
        box.setAlignment(Pos.BASELINE_LEFT);
        box.getStyleClass().add("asks");
        Words.show(box, false);
        return box;
    }

    private void letItRun() {
        askAtS = 2 * seconds();
        stop.requestFocus();
        Words.show(asks, false);
    }

    private double seconds() {
        return (System.nanoTime() - begunNanos) / 1e9;
    }

    private void askIfLong() {
        boolean asking = model.phase().get() == Phase.RUNNING && seconds() >= askAtS;
        if (asking && !asks.isVisible()) {
            String soFar = String.valueOf(Math.round(seconds()));
            ((Label) asks.getChildren().get(0)).setText(Say.of("snippet.asks", soFar));
        }
        Words.show(asks, asking);
    }

    /** The numbers to turn, in the order of the lines that declare them. */
    private VBox dials() {
        VBox box = new VBox();
        box.getStyleClass().add("dials");
        ListChangeListener<DialModel> refill =
                change -> {
                    box.getChildren()
                            .setAll(
                                    model.dials().stream()
                                            .map(dial -> new DialView(dial, units))
                                            .toList());
                    Words.show(box, !model.dials().isEmpty());
                };
        model.dials().addListener(refill);
        refill.onChanged(null);
        return box;
    }

    private static Folded folded(VBox paper) {
        return new Folded(Say.of("snippet.given.show"), Say.of("snippet.given.fold"), () -> paper);
    }

    OutcomeView outcome() {
        return outcome;
    }

    private FlowPane foot() {
        run.getStyleClass().add("run-word");
        model.edited().addListener((value, was, is) -> allowReset(is));
        allowReset(model.edited().get());
        status.getStyleClass().add("status");
        Button what = Words.button(Say.of("snippet.help"), help::turn);
        what.getStyleClass().add("quiet-word");
        FlowPane foot = new FlowPane(run, stop, reset, fromHere, what, status);
        foot.getStyleClass().add("slip-foot");
        fromHere.getStyleClass().add("quiet-word");
        return foot;
    }

    private void phaseChanged(Phase phase) {
        if (phase == Phase.RUNNING) {
            begunNanos = System.nanoTime();
            askAtS = settings.limit(BenchLimit.ASK_AFTER_SECONDS);
        }
        if (phase == Phase.RESTING) {
            clock.stop();
            handOver(stop, run);
        } else {
            clock.play();
            handOver(run, stop);
        }
        tellTime();
    }

    private void allowReset(boolean edited) {
        reset.setDisable(!edited && !reset.isFocused());
        if (!edited && reset.isFocused()) {
            slip.requestFocus();
            reset.setDisable(true);
        }
    }

    /** A word that has the focus hands it on before it falls silent, or it would go far away. */
    private static void handOver(Button from, Button to) {
        to.setDisable(false);
        if (from.isFocused()) {
            to.requestFocus();
        }
        from.setDisable(true);
    }

    private void tellTime() {
        if (model.came().turning() && model.phase().get() == Phase.RESTING) {
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
        String time = seconds(seconds(), 1);
        String first = model.progress().get();
        return first.isEmpty() ? Say.of("snippet.runs", time) : first + ", " + time;
    }

    private String rested() {
        Run run = model.came().lastRun().get();
        if (run == null) {
            return model.onlyForBelow().get() ? Say.of("snippet.for-below") : "";
        }
        if (model.came().changedSinceRun().get()) {
            return Say.of("snippet.changed");
        }
        if (model.came().outOfDate().get()) {
            return Say.of("snippet.out-of-date");
        }
        return run.outcome().finished()
                ? Say.of("snippet.ran", seconds(run.elapsed().toNanos() / 1e9, 2))
                : Say.of("snippet.not-to-end");
    }

    private static String seconds(double seconds, int places) {
        return String.format(Locale.ROOT, "%." + places + "f\u00A0s", seconds);
    }
}
