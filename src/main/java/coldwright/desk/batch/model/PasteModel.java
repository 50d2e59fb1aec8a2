package coldwright.desk.batch.model;

import coldwright.batch.RecipeLine;
import coldwright.recipe.IngredientLine;
import coldwright.recipe.LineReading;
import coldwright.recipe.PastedRecipe;
import coldwright.science.mix.Ingredient;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A pasted recipe while a cook decides what its unclear lines mean. */
public final class PasteModel {
    private final PastedRecipe pasted;
    private final List<List<RecipeLine>> rows = new ArrayList<>();
    private final Collection<Ingredient> own;

    /** Reads a text, with ingredients of the cook's own. */
    public PasteModel(String text, Collection<Ingredient> own) {
        this.own = List.copyOf(own);
        pasted = PastedRecipe.read(text, this.own);
        pasted.lines().forEach(line -> rows.add(lines(line)));
    }

    /** What was read. */
    public PastedRecipe pasted() {
        return pasted;
    }

    /** The recipe lines of a pasted one, by its index. */
    public List<RecipeLine> rows(int index) {
        return rows.get(index);
    }

    /** Whether a pasted line is decided. */
    public boolean isDecided(int index) {
        return rows.get(index).stream().allMatch(RecipeLine::counts);
    }

    /** Takes one of the readings of a line. */
    public void choose(int index, LineReading.Choice choice) {
        LineReading line = pasted.lines().get(index);
        rows.set(
                index,
                choice.parts().isEmpty()
                        ? List.of()
                        : lines(
                                new LineReading(
                                        line.text(),
                                        "",
                                        line.name(),
                                        LineReading.State.UNDERSTOOD,
                                        choice.parts(),
                                        line.why(),
                                        List.of(),
                                        List.of())));
    }

    /** Takes an ingredient for a line whose name is unknown. */
    public void choose(int index, Ingredient ingredient) {
        LineReading line = pasted.lines().get(index);
        LineReading again =
                IngredientLine.read((line.amount() + " " + ingredient.name()).strip(), own);
        rows.set(index, lines(again));
    }

    private static List<RecipeLine> lines(LineReading line) {
        return RecipeLine.of(line).stream().map(RecipeLine::shown).toList();
    }

    /** All recipe lines, the undecided ones too. */
    public List<RecipeLine> all() {
        return rows.stream().flatMap(List::stream).toList();
    }
}
