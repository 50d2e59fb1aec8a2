package coldwright.desk.plate;

import coldwright.desk.model.PlateModel;
import coldwright.desk.model.Play;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The time of a drawing: a word to let it run, a slider to go to a moment, and what is seen. */
final class PlayBar extends HBox {
    private static final double LONGEST_S = 0.5;

    private final PlateModel model;
    private final Play play;
    private final Button press;
    private final Slider slider = new Slider();
    private final Label time = new Label();
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
                    play.pass(Math.min(LONGEST_S, seconds));
                }
            };

    PlayBar(PlateModel model) {
        this.model = model;
        this.play = model.play();
        press = Words.button(Say.of("plate.play"), play::press);
        getStyleClass().add("play-bar");
        setAlignment(Pos.CENTER_LEFT);
        time.getStyleClass().add("play-time");
        slider.setBlockIncrement(1);
        slider.setMajorTickUnit(1);
        HBox.setHgrow(slider, Priority.ALWAYS);
        slider.valueProperty().addListener((value, was, is) -> slid(is.doubleValue()));
        slider.addEventFilter(
                KeyEvent.KEY_PRESSED,
                event -> {
                    Runnable deed = deed(event.getCode());
                    if (deed != null) {
                        deed.run();
                        event.consume();
                    }
                });
        play.moment().addListener(value -> show());
        play.playing().addListener((value, was, is) -> run(is));
        sceneProperty()
                .addListener(
                        (value, was, is) -> {
                            if (is == null && play.playing().get()) {
                                play.press();
                            }
                        });
        getChildren().addAll(press, slider, time);
    }

    /** What a key does here, before the page would scroll at it. */
    private Runnable deed(KeyCode code) {
        return switch (code) {
            case SPACE -> play::press;
            case HOME -> () -> play.goTo(0);
            case END -> () -> play.goTo(play.count() - 1);
            default -> null;
        };
    }

    /** Another drawing is shown. */
    void take() {
        slider.setMax(Math.max(1, play.count() - 1));
        show();
    }

    private void slid(double value) {
        int moment = (int) Math.round(value);
        if (moment != play.moment().get()) {
            play.goTo(moment);
        }
    }

    private void show() {
        slider.setValue(play.moment().get());
        String seen = Face.moment(model);
        int colon = seen.indexOf(": ");
        time.setText(colon < 0 ? seen : seen.substring(0, colon));
        slider.setAccessibleText(Say.of("plate.time", seen));
    }

    private void run(boolean playing) {
        press.setText(Say.of(playing ? "plate.pause" : "plate.play"));
        if (playing) {
            clock.start();
        } else {
            clock.stop();
        }
    }
}
