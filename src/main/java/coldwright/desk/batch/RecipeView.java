package coldwright.desk.batch;

import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeIntent;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.model.PasteModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.mix.Ingredient;
import coldwright.text.DisplayText;

import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The recipe as a list of lines, its total, and the freezing setup. */
final class RecipeView extends VBox implements RecipeLineView.LineActions {
    private final TextField name = InputFields.field("brew-title");
    private final VBox lines = new VBox();
    private final YieldView yield = new YieldView(this::scaled, this::unscalable);
    private final CheckBox together = new CheckBox(Messages.of("batch.together"));
    private final Label state = TextControls.label("", "brew-fault");
    private final FreezingSetupView means = new FreezingSetupView(this::changed);
    private final RecipeIntentView intent = new RecipeIntentView(this::changed);
    private Subscription followed = Subscription.EMPTY;
    private final TextArea notes = new TextArea();
    private final Button undo = TextControls.button(Messages.of("batch.undo"), this::undo);
    private BatchModel batch;

    private boolean showing;

    RecipeView(BatchesModel brew) {
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
                        yield,
                        together,
                        state,
                        notes,
                        new PasteRecipeView(
                                brew,
                                () -> batch.recipe().get().ownByName().values(),
                                this::pasted),
                        new OwnIngredientView(this::own),
                        means);
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        followed.unsubscribe();
        batch = is;
        followed =
                batch.recipe()
                        .subscribe(this::refresh)
                        .and(batch.trouble().subscribe(this::refresh));
        refresh();
    }

    /** Stops following the batch. */
    void close() {
        followed.unsubscribe();
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
        yield.show(recipe);
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

    /** Scales all lines to a mass that depends on the recipe. */
    private void scaled(String place, ToDoubleFunction<Recipe> massG) {
        Recipe from = batch.from(place);
        batch.change(place, from.weighing(massG.applyAsDouble(from)));
    }

    private void unscalable(String typed) {
        state.setText(Messages.of("batch.no-total", typed));
        TextControls.show(state, !typed.isEmpty());
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
