package coldwright.desk.batch;

import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeIntent;
import coldwright.batch.RecipeLine;
import coldwright.batch.YieldUnit;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.PasteModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.mix.Ingredient;
import coldwright.text.DisplayText;
import coldwright.words.Words;

import javafx.beans.InvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The recipe as a list of lines, its total, and the freezing setup. */
final class RecipeView extends VBox implements RecipeLineView.LineActions {
    private final TextField name = InputFields.field("brew-title");
    private final VBox lines = new VBox();
    private final TextField total =
            InputFields.live(typed -> scale("total", typed, YieldUnit.GRAMS));
    private final HBox totalRow = InputFields.named("batch.total", total, "g");
    private final ChoiceBox<String> counted = new ChoiceBox<>();
    private final TextField yield =
            InputFields.live(typed -> scale("yield " + unit(), typed, unit()));
    private final CheckBox together = new CheckBox(Messages.of("batch.together"));
    private final Label state = TextControls.label("", "brew-fault");
    private final FreezingSetupView means = new FreezingSetupView(this::changed);
    private final RecipeIntentView intent = new RecipeIntentView(this::changed);
    private final InvalidationListener listener = value -> refresh();
    private final TextArea notes = new TextArea();
    private final Button undo = TextControls.button(Messages.of("batch.undo"), this::undo);
    private BatchModel batch;

    /** While the cook types a total it stays as typed; other changes are shown there. */
    private boolean scaling;

    private boolean showing;

    RecipeView() {
        getStyleClass().add("brew-recipe");
        lines.getStyleClass().add("brew-lines");
        name.setAccessibleText(Messages.of("batch.name"));
        name.textProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!showing) {
                                batch.change("name", batch.recipe().get().called(is));
                            }
                        });
        notes.setPromptText(Messages.of("batch.notes"));
        notes.setAccessibleText(Messages.of("batch.notes"));
        notes.setPrefRowCount(3);
        notes.setWrapText(true);
        notes.textProperty()
                .addListener(
                        value -> {
                            if (!showing) {
                                batch.change("notes", batch.recipe().get().noting(notes.getText()));
                            }
                        });
        counted.setAccessibleText(Messages.of("batch.yield"));
        counted.getSelectionModel()
                .selectedIndexProperty()
                .addListener(
                        value -> {
                            if (!showing) {
                                refresh();
                            }
                        });
        HBox or = InputFields.named("batch.servings", yield, "");
        or.getChildren().set(2, counted);
        FlowPane scale = InputFields.choices(totalRow, or);
        FlowPane words =
                InputFields.choices(
                        TextControls.button(Messages.of("batch.add-line"), this::addLine),
                        undo,
                        TextControls.button(Messages.of("batch.redo"), () -> batch.redo()));
        TextControls.show(state, false);
        getChildren()
                .addAll(
                        name,
                        intent,
                        lines,
                        words,
                        scale,
                        together,
                        state,
                        notes,
                        new PasteRecipeView(
                                () -> batch.recipe().get().ownByName().values(), this::pasted),
                        new OwnIngredientView(this::own),
                        means);
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        if (batch != null) {
            batch.recipe().removeListener(listener);
            batch.trouble().removeListener(listener);
        }
        batch = is;
        batch.recipe().addListener(listener);
        batch.trouble().addListener(listener);
        refresh();
    }

    private void refresh() {
        Recipe recipe = batch.recipe().get();
        showing = true;
        InputFields.put(name, recipe.name());
        if (!notes.getText().equals(recipe.notes())) {
            notes.setText(recipe.notes());
        }
        Map<String, Ingredient> own = recipe.ownByName();
        List<RecipeLine> all = recipe.lines();
        while (lines.getChildren().size() > all.size()) {
            lines.getChildren().remove(lines.getChildren().size() - 1);
        }
        while (lines.getChildren().size() < all.size()) {
            lines.getChildren().add(new RecipeLineView(lines.getChildren().size(), this));
        }
        for (int i = 0; i < all.size(); i++) {
            view(i).show(all.get(i), own);
        }
        InputFields.unit(totalRow, Words.units().unit("g"));
        showYields();
        if (!scaling || !total.isFocused()) {
            put(total, Words.units().value(recipe.massG(), "g"));
        }
        if (!scaling || !yield.isFocused()) {
            put(yield, count(recipe, unit()));
        }
        intent.show(recipe.intent());
        means.show(recipe.setup());
        showing = false;
        boolean wrong = all.stream().anyMatch(line -> line.fault().isPresent());
        state.setText(
                wrong
                        ? Messages.of("batch.as-before")
                        : DisplayText.sentence(batch.trouble().get()));
        TextControls.show(state, !state.getText().isEmpty());
    }

    private static void put(TextField field, double value) {
        InputFields.put(field, Words.written(Words.shown(), RecipeLine.number(value)));
    }

    /** What may be counted instead of grams, in the units and the language shown. */
    private void showYields() {
        List<String> names = new ArrayList<>();
        for (YieldUnit unit : YieldUnit.values()) {
            if (unit != YieldUnit.GRAMS) {
                names.add(Messages.of("batch.yield." + unit.name(), YieldUnit.SERVING_G));
            }
        }
        if (!counted.getItems().equals(names)) {
            int chosen = Math.max(0, counted.getSelectionModel().getSelectedIndex());
            counted.getItems().setAll(names);
            counted.getSelectionModel().select(chosen);
        }
        yield.setAccessibleText(Messages.of("batch.yield") + ", " + counted.getValue());
    }

    private YieldUnit unit() {
        return YieldUnit.values()[1 + Math.max(0, counted.getSelectionModel().getSelectedIndex())];
    }

    /** How many units a recipe makes; 0 while it isn't a mix. */
    private static double count(Recipe recipe, YieldUnit unit) {
        try {
            return Math.round(100 * recipe.massG() / unit.massG(recipe)) / 100.0;
        } catch (IllegalArgumentException e) {
            return 0;
        }
    }

    private RecipeLineView view(int index) {
        return (RecipeLineView) lines.getChildren().get(index);
    }

    private void changed(String place, FreezingSetup now) {
        batch.change(place, batch.recipe().get().by(now));
    }

    /** Adds pasted lines; an empty first line makes room for them. */
    private void pasted(PasteModel paste) {
        Recipe was = batch.recipe().get();
        List<RecipeLine> all = new ArrayList<>(was.lines());
        all.removeIf(RecipeLine::unfinished);
        all.addAll(paste.all());
        String before = was.notes().isEmpty() ? "" : was.notes() + "\n";
        Recipe now = was.of(all.subList(0, Math.min(all.size(), Recipe.MOST_LINES)));
        batch.change("", now.noting((before + paste.pasted().notes()).strip()));
    }

    private void changed(String place, RecipeIntent now) {
        batch.change(place, batch.recipe().get().meant(now));
    }

    private void own(String ownName, String parts) {
        Recipe recipe = batch.recipe().get().owning(ownName, parts);
        batch.change("", recipe.plus(new RecipeLine("", ownName.strip())));
        view(lines.getChildren().size() - 1).focusAmount();
    }

    /** Scales all lines to a number of units. */
    private void scale(String place, String typed, YieldUnit unit) {
        if (showing) {
            return;
        }
        scaling = true;
        try {
            Recipe from = batch.from(place);
            double each =
                    unit == YieldUnit.GRAMS ? 1 / Words.units().value(1.0, "g") : unit.massG(from);
            double count = Double.parseDouble(typed.strip().replace(',', '.'));
            batch.change(place, from.weighing(count * each));
        } catch (IllegalArgumentException e) {
            state.setText(Messages.of("batch.no-total", typed.strip()));
            TextControls.show(state, !typed.isBlank());
        } finally {
            scaling = false;
        }
    }

    @Override
    public void typed(int index, RecipeLine line, boolean inAmount) {
        if (inAmount && together.isSelected()) {
            String place = "amounts " + index;
            batch.change(place, scaled(batch.from(place), index, line));
        } else {
            String place = (inAmount ? "amount " : "name ") + index;
            batch.change(place, batch.recipe().get().with(index, line));
        }
    }

    /** Scales all other lines with the edited one; unchanged while its amount can't be read. */
    private static Recipe scaled(Recipe was, int index, RecipeLine line) {
        Recipe now = was.with(index, line);
        RecipeLine before = was.lines().get(index);
        if (before.fault().isPresent() || line.fault().isPresent()) {
            return now;
        }
        double from = before.grams();
        double to = line.grams();
        return from > 0 && to > 0 ? was.times(to / from).with(index, line) : now;
    }

    @Override
    public void remove(int index) {
        batch.change("", batch.recipe().get().without(index));
        List<RecipeLineView> left = new ArrayList<>();
        lines.getChildren().forEach(one -> left.add((RecipeLineView) one));
        if (!left.isEmpty()) {
            left.get(Math.min(index, left.size() - 1)).focusAmount();
        }
    }

    @Override
    public void next(int index) {
        if (index + 1 < lines.getChildren().size()) {
            view(index + 1).focusAmount();
        } else {
            addLine();
        }
    }

    private void addLine() {
        if (batch.recipe().get().lines().size() < Recipe.MOST_LINES) {
            batch.change("", batch.recipe().get().plus(new RecipeLine("", "")));
            view(lines.getChildren().size() - 1).focusAmount();
        }
    }

    private void undo() {
        batch.undo();
    }

    void focusFirst() {
        if (!lines.getChildren().isEmpty()) {
            view(0).focusAmount();
        }
    }

    /**
     * Focuses the change: the first line that changed, or the button that undoes it.
     *
     * @param was the recipe before
     */
    void focusOnTaken(Recipe was) {
        List<RecipeLine> now = batch.recipe().get().lines();
        for (int i = 0; i < now.size(); i++) {
            if (i >= was.lines().size() || !now.get(i).equals(was.lines().get(i))) {
                view(i).focusAmount();
                return;
            }
        }
        undo.requestFocus();
    }
}
