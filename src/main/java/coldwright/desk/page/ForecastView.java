package coldwright.desk.page;

import coldwright.desk.model.ForecastModel;
import coldwright.desk.prose.ProseView;
import coldwright.lesson.Answer;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.function.Consumer;

/** A question before the run; after it, what was said beside what is. */
final class ForecastView extends VBox {
    private final ForecastModel model;
    private final Consumer<String> openLink;
    private final VBox answer = new VBox();

    ForecastView(ForecastModel model, Consumer<String> openLink) {
        this.model = model;
        this.openLink = openLink;
        getStyleClass().add("forecast");
        answer.getStyleClass().add("forecast-answer");
        getChildren()
                .addAll(
                        Words.label("What do you expect?", "kicker"),
                        Words.label(model.forecast().question(), "question"),
                        asked(),
                        answer);
        Words.show(answer, false);
        model.revealed().addListener((value, was, is) -> reveal());
        if (model.revealed().get()) {
            reveal();
        }
    }

    private Node asked() {
        if (model.forecast().answer() instanceof Answer.Choice choice) {
            return choices(choice);
        }
        if (model.forecast().answer() instanceof Answer.Amount amount) {
            return number(amount);
        }
        throw new AssertionError(model.forecast().answer());
    }

    private Node choices(Answer.Choice choice) {
        VBox box = new VBox();
        box.getStyleClass().add("choices");
        ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < choice.choices().size(); i++) {
            int index = i;
            RadioButton button = new RadioButton(choice.choices().get(i));
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

    private void reveal() {
        GridPane beside = new GridPane();
        beside.getStyleClass().add("beside");
        beside.addRow(
                0,
                Words.label("You said", "beside-head"),
                Words.label(model.said().orElse("nothing yet"), "beside-said"));
        beside.addRow(
                1, Words.label("It is", "beside-head"), Words.label(model.right(), "beside-right"));
        String verdict =
                switch (model.verdict()) {
                    case RIGHT -> "As you said.";
                    case OTHERWISE -> "Not as you said.";
                    case NOT_SAID ->
                            "Next time say first what you expect: it makes the run tell more.";
                };
        answer.getChildren()
                .setAll(
                        List.of(
                                beside,
                                Words.label(verdict, "verdict"),
                                new ProseView(model.forecast().explanation(), openLink)));
        Words.show(answer, true);
    }
}
