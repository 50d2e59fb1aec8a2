package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureModel;
import coldwright.desk.figure.model.Playback;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The playback controls of a drawing: a button, a slider, and the current moment. */
final class PlaybackBar extends HBox {
    private static final double LONGEST_S = 0.5;

    private final FigureModel model;
    private final Playback playback;
    private final Button press;
    private final Slider slider = new Slider();
    private final Label time = TextControls.styled(new Label(), "play-time");
    private final AnimationTimer clock =
            new AnimationTimer() {
                private long last;

                @Override
                public void start() {
                    last = 0;
                    super.start();
                }

                @Override
                public void handle(long now) {
                    double seconds = last == 0 ? 0 : (now - last) / 1e9;
                    last = now;
                    playback.pass(Math.min(LONGEST_S, seconds));
                }
            };

    PlaybackBar(FigureModel model) {
        this.model = model;
        this.playback = model.play();
        press = TextControls.command("figure.play", playback::press);
        getStyleClass().add("play-bar");
        setAlignment(Pos.CENTER_LEFT);
        slider.setBlockIncrement(1);
        slider.setMajorTickUnit(1);
        HBox.setHgrow(slider, Priority.ALWAYS);
        slider.valueProperty().addListener((value, was, is) -> slid(is.doubleValue()));
        slider.addEventFilter(
                KeyEvent.KEY_PRESSED,
                event -> {
                    Runnable deed = action(event.getCode());
                    if (deed != null) {
                        deed.run();
                        event.consume();
                    }
                });
        playback.moment().addListener(value -> show());
        playback.playing().addListener((value, was, is) -> run(is));
        sceneProperty()
                .addListener(
                        (value, was, is) -> {
                            if (is == null && playback.playing().get()) {
                                playback.press();
                            }
                        });
        getChildren().addAll(press, slider, time);
    }

    /** The action of a key, so that the page doesn't scroll at it. */
    private Runnable action(KeyCode code) {
        return switch (code) {
            case SPACE -> playback::press;
            case HOME -> () -> playback.goTo(0);
            case END -> () -> playback.goTo(playback.count() - 1);
            default -> null;
        };
    }

    /** Shows another drawing. */
    void take() {
        slider.setMax(Math.max(1, playback.count() - 1));
        show();
    }

    private void slid(double value) {
        int moment = (int) Math.round(value);
        if (moment != playback.moment().get()) {
            playback.goTo(moment);
        }
    }

    private void show() {
        slider.setValue(playback.moment().get());
        String seen = FigureCanvas.moment(model);
        int colon = seen.indexOf(": ");
        time.setText(colon < 0 ? seen : seen.substring(0, colon));
        slider.setAccessibleText(Messages.of("figure.time", seen));
    }

    private void run(boolean playing) {
        press.setText(Messages.of(playing ? "figure.pause" : "figure.play"));
        if (playing) {
            clock.start();
        } else {
            clock.stop();
        }
    }
}
