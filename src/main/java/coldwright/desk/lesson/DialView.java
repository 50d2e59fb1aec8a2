package coldwright.desk.lesson;

import coldwright.desk.figure.model.DisplayNumber;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.DialModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.figure.UnitConversion;
import coldwright.lesson.Dial;

import javafx.animation.PauseTransition;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.util.OptionalDouble;

/** A dial: a slider, an editable number, and its unit. */
final class DialView extends VBox {
    /** A dial that hasn't moved for this long is at rest. */
    private static final Duration REST = Duration.millis(450);

    private static final int PAGE_NOTCHES = 10;

    private final DialModel model;
    private final ObservableValue<UnitConversion> units;
    private final Label unit = TextControls.styled(new Label(), "dial-unit");
    private final Slider slider = new Slider();
    private final TextField number =
            TextControls.styled(new TextField(), "number-field", "dial-number");
    private final Label inputError = TextControls.label("", "input-error");
    private final PauseTransition rest = new PauseTransition(REST);
    private boolean following;

    DialView(DialModel model, ObservableValue<UnitConversion> units) {
        this.model = model;
        this.units = units;
        Dial dial = model.dial();
        getStyleClass().add("dial");
        Label name = TextControls.styled(new Label(dial.variable()), "dial-name");
        HBox.setHgrow(slider, Priority.ALWAYS);
        slider.setMaxWidth(Double.MAX_VALUE);
        slider.setMin(dial.least());
        slider.setMax(dial.most());
        slider.setBlockIncrement(dial.step());
        slider.setAccessibleText(spoken(dial));
        number.setAccessibleText(Messages.of("dial.typed", dial.variable()));
        number.setPrefColumnCount(5);
        HBox row = TextControls.styled(new HBox(name, slider, number, unit), "dial-row");
        row.setAlignment(Pos.CENTER_LEFT);
        TextControls.show(inputError, false);
        getChildren().addAll(row, inputError);
        listen();
        WhileShown.follow(this, this::follow, model.value(), units);
    }

    private static String spoken(Dial dial) {
        return Messages.of(
                "dial.spoken",
                dial.variable(),
                DisplayNumber.of(dial.least()),
                DisplayNumber.of(dial.most()),
                dial.unit());
    }

    private void listen() {
        slider.valueProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!following) {
                                model.turn(is.doubleValue());
                                follow();
                                rest.playFromStart();
                            }
                        });
        slider.setOnKeyPressed(
                event -> {
                    switch (event.getCode()) {
                        case PAGE_UP -> model.turnBy(PAGE_NOTCHES);
                        case PAGE_DOWN -> model.turnBy(-PAGE_NOTCHES);
                        // The slider handles these keys on release, when the page would have
                        // scrolled to its end.
                        case HOME -> model.turn(model.dial().least());
                        case END -> model.turn(model.dial().most());
                        default -> {
                            return;
                        }
                    }
                    event.consume();
                    rest.playFromStart();
                });
        slider.valueChangingProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!is) {
                                rest.stop();
                                model.rest();
                            }
                        });
        rest.setOnFinished(
                event -> {
                    if (!slider.isValueChanging()) {
                        model.rest();
                    }
                });
        TextControls.whenTyped(number, this::typed);
    }

    /** Updates slider and number from the dial. */
    private void follow() {
        following = true;
        slider.setValue(model.value().get());
        following = false;
        unit.setText(Typography.of(inUnits()));
        if (!number.isFocused()) {
            number.setText(DisplayNumber.of(model.value().get()));
        }
    }

    /** The unit, followed by the value in the reader's own unit. */
    private String inUnits() {
        String own = model.dial().unit();
        UnitConversion used = units.getValue();
        if (used.unit(own).equals(own)) {
            return own;
        }
        double value = used.value(model.value().get(), own);
        return "%s = %s %s".formatted(own, DisplayNumber.rounded(value), used.unit(own));
    }

    private void typed() {
        OptionalDouble read = DisplayNumber.read(number.getText());
        Dial dial = model.dial();
        boolean within =
                read.isPresent()
                        && read.getAsDouble() >= dial.least()
                        && read.getAsDouble() <= dial.most();
        TextControls.show(inputError, !within);
        if (within) {
            model.type(read.getAsDouble());
        } else {
            inputError.setText(
                    Messages.of(
                            "dial.invalid",
                            number.getText().strip(),
                            DisplayNumber.of(dial.least()),
                            DisplayNumber.of(dial.most())));
        }
    }
}
