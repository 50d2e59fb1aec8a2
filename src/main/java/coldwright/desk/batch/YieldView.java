package coldwright.desk.batch;

import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.batch.YieldUnit;
import coldwright.desk.messages.Messages;
import coldwright.words.Words;

import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** How much a recipe makes, in all and by count; a typed number scales it. */
final class YieldView extends FlowPane {
    private final BiConsumer<String, ToDoubleFunction<Recipe>> scale;
    private final Consumer<String> wrong;
    private final TextField total = InputFields.live(typed -> scale(typed, YieldUnit.GRAMS));
    private final HBox totalRow = InputFields.named("batch.total", total, "g");
    private final ChoiceBox<String> counted = new ChoiceBox<>();
    private final TextField count = InputFields.live(typed -> scale(typed, unit()));
    private Recipe recipe;

    /** A number that is typed stays as typed; other changes are shown in the other field. */
    private boolean scaling;

    private boolean showing;

    /**
     * Makes fields.
     *
     * @param scale receives the changed field, and the new mass, g, of a recipe
     * @param wrong receives a text that is no number above 0
     */
    YieldView(BiConsumer<String, ToDoubleFunction<Recipe>> scale, Consumer<String> wrong) {
        this.scale = scale;
        this.wrong = wrong;
        getStyleClass().add("brew-choices");
        counted.setAccessibleText(Messages.of("batch.yield"));
        counted.getSelectionModel()
                .selectedIndexProperty()
                .addListener(
                        value -> {
                            if (!showing) {
                                show(recipe);
                            }
                        });
        HBox or = InputFields.named("batch.servings", count, "");
        or.getChildren().set(2, counted);
        getChildren().addAll(totalRow, or);
    }

    /** Shows how much a recipe makes, in the units and the language shown. */
    void show(Recipe is) {
        recipe = is;
        showing = true;
        InputFields.unit(totalRow, Words.units().unit("g"));
        List<String> names =
                Stream.of(YieldUnit.values())
                        .skip(1)
                        .map(one -> Messages.of("batch.yield." + one, YieldUnit.SERVING_G))
                        .toList();
        if (!counted.getItems().equals(names)) {
            int chosen = Math.max(0, counted.getSelectionModel().getSelectedIndex());
            counted.getItems().setAll(names);
            counted.getSelectionModel().select(chosen);
        }
        count.setAccessibleText(Messages.of("batch.yield") + ", " + counted.getValue());
        if (!scaling || !total.isFocused()) {
            put(total, Words.units().value(is.massG(), "g"));
        }
        if (!scaling || !count.isFocused()) {
            put(count, count(is));
        }
        showing = false;
    }

    private static void put(TextField field, double value) {
        InputFields.put(field, Words.written(Words.shown(), RecipeLine.number(value)));
    }

    private YieldUnit unit() {
        return YieldUnit.values()[1 + Math.max(0, counted.getSelectionModel().getSelectedIndex())];
    }

    /** How many units a recipe makes; 0 while it isn't a mix. */
    private double count(Recipe is) {
        try {
            return Math.round(100 * is.massG() / unit().massG(is)) / 100.0;
        } catch (IllegalArgumentException e) {
            return 0;
        }
    }

    private void scale(String typed, YieldUnit unit) {
        if (showing) {
            return;
        }
        scaling = true;
        try {
            double number = Double.parseDouble(typed.strip().replace(',', '.'));
            double grams = number / Words.units().value(1.0, "g");
            scale.accept(
                    "yield " + unit,
                    one -> unit == YieldUnit.GRAMS ? grams : number * unit.massG(one));
        } catch (IllegalArgumentException e) {
            wrong.accept(typed.strip());
        } finally {
            scaling = false;
        }
    }
}
