package coldwright.desk.lesson;

import coldwright.desk.figure.CurveSketchPad;
import coldwright.desk.figure.FigureSettings;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.lesson.ExpectedAnswer;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.Set;
import java.util.TreeSet;

/** A question before the run. */
final class PredictionView extends VBox {
    private final PredictionModel model;
    private final ObservableValue<Boolean> classroom;
    private final FigureSettings room;

    PredictionView(PredictionModel model, PageState state) {
        this.model = model;
        this.classroom = state.classroom();
        this.room = state.figureSettings();
        getStyleClass().add("prediction");
        getChildren()
                .addAll(
                        TextControls.label(
                                Messages.of(
                                        model.withoutRun() ? "question.asks" : "prediction.asks"),
                                "kicker"),
                        TextControls.label(model.prediction().question(), "question"),
                        asked());
    }

    private Node asked() {
        if (model.prediction().answer() instanceof ExpectedAnswer.Choice choice) {
            return choices(choice);
        }
        if (model.prediction().answer() instanceof ExpectedAnswer.Several several) {
            return several(several);
        }
        if (model.prediction().answer() instanceof ExpectedAnswer.Amount amount) {
            return number(amount);
        }
        if (model.prediction().answer() instanceof ExpectedAnswer.Curve axes) {
            return new CurveSketchPad(model, axes, room);
        }
        throw new AssertionError(model.prediction().answer());
    }

    private Node choices(ExpectedAnswer.Choice choice) {
        VBox box = TextControls.styled(new VBox(), "choices");
        ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < choice.choices().size(); i++) {
            int index = i;
            RadioButton button = new RadioButton(Typography.of(choice.choices().get(i)));
            button.setWrapText(true);
            button.setToggleGroup(group);
            WhileShown.follow(
                    button,
                    () -> button.setSelected(model.chosen().get() == index),
                    model.chosen());
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
            button.setMinWidth(0);
            button.setWrapText(true);
            box.getChildren().add(new HBox(button, TextControls.shown(hands(index), classroom)));
        }
        return box;
    }

    /** Boxes to tick, and a button that shows the answer. */
    private Node several(ExpectedAnswer.Several several) {
        VBox box = TextControls.styled(new VBox(), "choices");
        for (int i = 0; i < several.choices().size(); i++) {
            int index = i;
            CheckBox tick = new CheckBox(Typography.of(several.choices().get(i)));
            tick.setWrapText(true);
            tick.setOnAction(
                    event -> {
                        Set<Integer> now = new TreeSet<>(several.chosen(model.typed().get()));
                        if (!now.remove(index)) {
                            now.add(index);
                        }
                        model.typed().set(several.words(now));
                    });
            WhileShown.follow(
                    tick,
                    () -> tick.setSelected(several.chosen(model.typed().get()).contains(index)),
                    model.typed());
            tick.disableProperty().bind(model.revealed());
            box.getChildren().add(tick);
        }
        Button show = TextControls.command("question.show", model::reveal);
        box.getChildren().add(TextControls.shown(show, model.revealed().not()));
        return box;
    }

    /** Buttons that count raised hands for a choice. */
    private Node hands(int index) {
        Label count = TextControls.styled(new Label(), "votes-count");
        Button fewer = TextControls.button("−", () -> model.count(index, -1));
        Button more = TextControls.button("+", () -> model.count(index, 1));
        Runnable counted =
                () -> {
                    int hands = model.hands().get(index);
                    count.setText(String.valueOf(hands));
                    more.setAccessibleText(Messages.of("votes.more", hands));
                    fewer.setAccessibleText(Messages.of("votes.fewer", hands));
                };
        HBox row = TextControls.styled(new HBox(fewer, count, more), "votes");
        WhileShown.follow(row, counted, model.hands());
        row.setAlignment(Pos.BASELINE_RIGHT);
        return row;
    }

    private Node number(ExpectedAnswer.Amount amount) {
        TextField field = TextControls.styled(new TextField(), "number-field");
        field.setPrefColumnCount(7);
        field.setAccessibleText(model.prediction().question());
        field.textProperty().bindBidirectional(model.typed());
        field.disableProperty().bind(model.revealed());
        HBox row = TextControls.row("number-row", field, new Label(amount.unit()));
        Label inputError = TextControls.label("", "input-error");
        TextControls.show(inputError, false);
        field.textProperty()
                .addListener(
                        value -> {
                            inputError.setText(model.inputError().orElse(""));
                            TextControls.show(inputError, model.inputError().isPresent());
                        });
        return new VBox(row, inputError);
    }
}
