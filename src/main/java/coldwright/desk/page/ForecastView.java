package coldwright.desk.page;

import coldwright.desk.model.ForecastModel;
import coldwright.desk.plate.PlateRoom;
import coldwright.desk.plate.SketchPad;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.lesson.Answer;

import javafx.beans.InvalidationListener;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A question before the run. */
final class ForecastView extends VBox {
    private final ForecastModel model;
    private final ObservableValue<Boolean> workshop;
    private final PlateRoom room;

    ForecastView(ForecastModel model, PageState state) {
        this.model = model;
        this.workshop = state.workshop();
        this.room = state.room();
        getStyleClass().add("forecast");
        getChildren()
                .addAll(
                        Words.label(Say.of("forecast.asks"), "kicker"),
                        Words.label(Typography.of(model.forecast().question()), "question"),
                        asked());
    }

    private Node asked() {
        if (model.forecast().answer() instanceof Answer.Choice choice) {
            return choices(choice);
        }
        if (model.forecast().answer() instanceof Answer.Amount amount) {
            return number(amount);
        }
        if (model.forecast().answer() instanceof Answer.Curve axes) {
            return new SketchPad(model, axes, room);
        }
        throw new AssertionError(model.forecast().answer());
    }

    private Node choices(Answer.Choice choice) {
        VBox box = new VBox();
        box.getStyleClass().add("choices");
        ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < choice.choices().size(); i++) {
            int index = i;
            RadioButton button = new RadioButton(Typography.of(choice.choices().get(i)));
            button.setWrapText(true);
            button.setToggleGroup(group);
            button.setSelected(model.chosen().get() == i);
            button.selectedProperty()
                    .addListener(
                            (value, was, is) -> {
                                if (is) {
                                    model.chosen().set(index);
                                }
                            });
            button.disableProperty().bind(model.revealed());
            HBox.setHgrow(button, Priority.ALWAYS);
            button.setMaxWidth(Double.MAX_VALUE);
            box.getChildren().add(new HBox(button, Words.shown(hands(index), workshop)));
        }
        return box;
    }

    /** Counts hands for a choice. */
    private Node hands(int index) {
        Label count = new Label();
        count.getStyleClass().add("hands-count");
        Button fewer = Words.button("−", () -> model.count(index, -1));
        Button more = Words.button("+", () -> model.count(index, 1));
        InvalidationListener tell =
                value -> {
                    String hands = String.valueOf(model.hands().get(index));
                    count.setText(hands);
                    more.setAccessibleText(Say.of("hands.more", hands));
                    fewer.setAccessibleText(Say.of("hands.fewer", hands));
                };
        model.hands().addListener(tell);
        tell.invalidated(null);
        HBox row = new HBox(fewer, count, more);
        row.setAlignment(Pos.BASELINE_RIGHT);
        row.getStyleClass().add("hands");
        return row;
    }

    private Node number(Answer.Amount amount) {
        TextField field = new TextField();
        field.getStyleClass().add("number-field");
        field.setPrefColumnCount(7);
        field.setAccessibleText(model.forecast().question());
        field.textProperty().bindBidirectional(model.typed());
        field.disableProperty().bind(model.revealed());
        HBox row = new HBox(field, new Label(amount.unit()));
        row.setAlignment(Pos.BASELINE_LEFT);
        row.getStyleClass().add("number-row");
        Label mend = Words.label("", "mend");
        Words.show(mend, false);
        field.textProperty()
                .addListener(
                        value -> {
                            mend.setText(model.mend().orElse(""));
                            Words.show(mend, model.mend().isPresent());
                        });
        return new VBox(row, mend);
    }
}
