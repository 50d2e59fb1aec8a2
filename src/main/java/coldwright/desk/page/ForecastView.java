package coldwright.desk.page;

import coldwright.desk.model.ForecastModel;
import coldwright.desk.prose.Typography;
import coldwright.lesson.Answer;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A question before the run. */
final class ForecastView extends VBox {
    private final ForecastModel model;

    ForecastView(ForecastModel model) {
        this.model = model;
        getStyleClass().add("forecast");
        getChildren()
                .addAll(
                        Words.label("What do you expect?", "kicker"),
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
        if (model.forecast().answer() instanceof Answer.Curve) {
            return Words.label("Picture the curve to yourself, then run.", "curve-asked");
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
            box.getChildren().add(button);
        }
        return box;
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
