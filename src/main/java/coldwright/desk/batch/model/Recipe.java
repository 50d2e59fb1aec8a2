package coldwright.desk.batch.model;

import coldwright.science.balance.AmountChange;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.OwnIngredient;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A recipe as it stands on the page; each change gives a new one.
 *
 * @param name what the batch is called
 * @param means what it is frozen with
 * @param own the cook's own ingredients, each as {@code name = part percent, …}
 * @param others lines of a file's head that the page does not show: targets and a total
 * @param lines its ingredients
 */
public record Recipe(
        String name,
        FreezingSetup means,
        List<String> own,
        List<String> others,
        List<RecipeLine> lines) {
    /** Most lines that a batch may have. */
    public static final int MOST_LINES = coldwright.batch.RecipeFileReader.MOST_ROWS;

    public Recipe {
        own = List.copyOf(own);
        others = List.copyOf(others);
        lines = List.copyOf(lines);
    }

    /**
     * Something to change: a blood-orange sorbet in a bag.
     *
     * @param name what it shall be called
     * @return the recipe
     */
    public static Recipe starter(String name) {
        return new Recipe(
                name,
                FreezingSetup.USUAL,
                List.of(),
                List.of(),
                List.of(
                        new RecipeLine("600 g", "blood orange juice"),
                        new RecipeLine("150 g", "sucrose"),
                        new RecipeLine("50 g", "water")));
    }

    /** The same under another name. */
    public Recipe called(String newName) {
        return new Recipe(newName, means, own, others, lines);
    }

    /** The same frozen with other means. */
    public Recipe by(FreezingSetup newMeans) {
        return new Recipe(name, newMeans, own, others, lines);
    }

    /** The same with other lines. */
    public Recipe of(List<RecipeLine> newLines) {
        return new Recipe(name, means, own, others, newLines);
    }

    /** The same with one line changed. */
    public Recipe with(int index, RecipeLine line) {
        List<RecipeLine> now = new ArrayList<>(lines);
        now.set(index, line);
        return of(now);
    }

    /** The same with one more line. */
    public Recipe plus(RecipeLine line) {
        List<RecipeLine> now = new ArrayList<>(lines);
        now.add(line);
        return of(now);
    }

    /** The same without a line. */
    public Recipe without(int index) {
        List<RecipeLine> now = new ArrayList<>(lines);
        now.remove(index);
        return of(now);
    }

    /**
     * The same with an own ingredient more, or another in its place.
     *
     * @param ownName its name
     * @param parts such as {@code water 40, sucrose 60}
     * @return the recipe
     * @throws IllegalArgumentException if it can't be understood
     */
    public Recipe owning(String ownName, String parts) {
        if (ownName.isBlank() || ownName.matches(".*[=\\r\\n].*")) {
            throw new IllegalArgumentException(
                    "an ingredient of your own needs a name, without the sign =");
        }
        OwnIngredient.of(ownName.strip(), parts.strip());
        List<String> now = new ArrayList<>(own);
        now.removeIf(one -> nameOf(one).equals(ownName.strip().toLowerCase(Locale.ROOT)));
        now.add(ownName.strip() + " = " + parts.strip());
        return new Recipe(name, means, now, others, lines);
    }

    private static String nameOf(String own) {
        return own.substring(0, own.indexOf('=')).strip().toLowerCase(Locale.ROOT);
    }

    /**
     * The cook's own ingredients.
     *
     * @return by their names in lower case
     */
    public Map<String, Ingredient> ownByName() {
        Map<String, Ingredient> map = new LinkedHashMap<>();
        for (String one : own) {
            int equals = one.indexOf('=');
            map.put(
                    nameOf(one),
                    OwnIngredient.of(
                            one.substring(0, equals).strip(), one.substring(equals + 1).strip()));
        }
        return map;
    }

    /**
     * What all lines weigh together that can be read.
     *
     * @return g
     */
    public double totalG() {
        Map<String, Ingredient> mine = ownByName();
        return lines.stream()
                .filter(line -> line.fault(mine).isEmpty())
                .mapToDouble(line -> line.grams(mine))
                .sum();
    }

    /**
     * The same in another size.
     *
     * @param newTotalG what it shall weigh, g
     * @return the recipe
     * @throws IllegalArgumentException if it has no weight to scale, or the new one is no weight
     */
    public Recipe weighing(double newTotalG) {
        double now = totalG();
        if (!(now > 0) || !(newTotalG > 0) || !(newTotalG <= 1e6)) {
            throw new IllegalArgumentException(
                    "the total can be scaled from more than 0 g to more than 0 g and up to a tonne");
        }
        return times(newTotalG / now);
    }

    /** The same, so many times as much. */
    public Recipe times(double factor) {
        return of(lines.stream().map(line -> line.times(factor)).toList());
    }

    /**
     * The same with some ingredients more or less.
     *
     * @param changes what to add and take out
     * @return the recipe
     */
    public Recipe changed(List<AmountChange> changes) {
        Map<String, Ingredient> mine = ownByName();
        Recipe now = this;
        for (AmountChange amountChange : changes) {
            now = now.changed(amountChange, mine);
        }
        return now;
    }

    private Recipe changed(AmountChange amountChange, Map<String, Ingredient> mine) {
        for (int i = 0; i < lines.size(); i++) {
            RecipeLine line = lines.get(i);
            if (!line.unfinished()
                    && line.fault(mine).isEmpty()
                    && line.ingredient(mine).equals(amountChange.ingredient())) {
                double massG = line.grams(mine) + amountChange.massG();
                return massG < 0.05 ? without(i) : with(i, line.weighing(massG));
            }
        }
        return plus(
                new RecipeLine(
                        TypedAmount.number(amountChange.massG()) + " g",
                        amountChange.ingredient().name()));
    }
}
