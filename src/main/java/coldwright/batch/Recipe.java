package coldwright.batch;

import coldwright.recipe.PastedRecipe;
import coldwright.science.balance.AmountChange;
import coldwright.science.balance.Target;
import coldwright.science.crystal.Method;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.OwnIngredient;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A recipe as a file states it and a window shows it. Each field has its text as typed and its
 * value, so that a change parses only the new text; each change gives a new recipe.
 *
 * @param name the batch's name
 * @param setup freezing and storage conditions
 * @param intent its style and diet
 * @param own the cook's own ingredients, each as {@code name = part percent, …}
 * @param goals targets for a balance, one list per line of the file
 * @param total how much a balance makes
 * @param lines its ingredients
 * @param notes the method and whatever else the cook keeps, one paragraph a line
 */
public record Recipe(
        String name,
        FreezingSetup setup,
        RecipeIntent intent,
        List<Typed<Ingredient>> own,
        List<Typed<List<Target>>> goals,
        Typed<RecipeTotal> total,
        List<RecipeLine> lines,
        String notes) {
    /** The most ingredients in a recipe. */
    public static final int MOST_LINES = 200;

    private static final double HOME_FREEZER_C = -18;

    public Recipe {
        own = List.copyOf(own);
        goals = List.copyOf(goals);
        Map<String, Ingredient> mine = byName(own);
        lines = lines.stream().map(line -> line.among(mine)).toList();
    }

    /** A recipe from ingredients of the shelf, without targets. */
    public static Recipe of(String name, FreezingSetup setup, List<RecipeLine> lines) {
        return new Recipe(
                name, setup, RecipeIntent.NONE, List.of(), List.of(), Typed.nothing(), lines, "");
    }

    /** A pasted recipe, with the lines that are still to be decided. */
    public static Recipe of(PastedRecipe pasted, FreezingSetup setup) {
        List<RecipeLine> lines =
                pasted.lines().stream()
                        .flatMap(line -> RecipeLine.of(line).stream())
                        .limit(MOST_LINES)
                        .toList();
        return of(pasted.title(), setup, lines).noting(pasted.notes());
    }

    /** An example to start from: a blood-orange sorbet in a bag. */
    public static Recipe starter(String name) {
        return of(
                name,
                FreezingSetup.USUAL,
                List.of(
                        new RecipeLine("600 g", Shelf.BLOOD_ORANGE_JUICE.phrase().shown()),
                        new RecipeLine("150 g", Shelf.SUCROSE.phrase().shown()),
                        new RecipeLine("50 g", Shelf.WATER.phrase().shown())));
    }

    /** The same under another name. */
    public Recipe called(String newName) {
        return new Recipe(newName, setup, intent, own, goals, total, lines, notes);
    }

    /** The same with other freezing conditions. */
    public Recipe by(FreezingSetup newSetup) {
        return new Recipe(name, newSetup, intent, own, goals, total, lines, notes);
    }

    /** The same with other notes, such as the method. */
    public Recipe noting(String newNotes) {
        return new Recipe(name, setup, intent, own, goals, total, lines, newNotes);
    }

    /** The same meant to be something else. */
    public Recipe meant(RecipeIntent newIntent) {
        return new Recipe(name, setup, newIntent, own, goals, total, lines, notes);
    }

    /** The same with other lines. */
    public Recipe of(List<RecipeLine> newLines) {
        return new Recipe(name, setup, intent, own, goals, total, newLines, notes);
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
     * Adds an ingredient of the cook's own, or replaces the one of that name.
     *
     * @param ownName its name
     * @param parts such as {@code water 40, sucrose 60}
     * @throws IllegalArgumentException if it can't be understood
     */
    public Recipe owning(String ownName, String parts) {
        if (ownName.isBlank() || ownName.matches("(?s).*(=|\\R).*")) {
            throw Fault.in("own.nameless");
        }
        Typed<Ingredient> described = described(ownName.strip(), parts.strip());
        List<Typed<Ingredient>> now = new ArrayList<>(own);
        now.removeIf(one -> nameOf(one).equals(ownName.strip().toLowerCase(Locale.ROOT)));
        now.add(described);
        return new Recipe(name, setup, intent, now, goals, total, lines, notes);
    }

    /** Parses an own ingredient; its fault is a sentence. */
    static Typed<Ingredient> described(String ownName, String parts) {
        return new Typed<>(
                ownName + " = " + parts, Optional.of(OwnIngredient.of(ownName, parts)), "");
    }

    static String nameOf(Typed<Ingredient> own) {
        return own.value().orElseThrow().name().toLowerCase(Locale.ROOT);
    }

    /** The cook's own ingredients by their names in lower case. */
    public Map<String, Ingredient> ownByName() {
        return byName(own);
    }

    static Map<String, Ingredient> byName(Collection<Typed<Ingredient>> own) {
        Map<String, Ingredient> map = new LinkedHashMap<>();
        own.forEach(one -> map.put(nameOf(one), one.value().orElseThrow()));
        return map;
    }

    /** Targets for a balance, in the order of the file. */
    public List<Target> targets() {
        return goals.stream().flatMap(one -> one.value().stream().flatMap(List::stream)).toList();
    }

    /** The total mass of the valid lines, g. */
    public double massG() {
        return lines.stream().filter(RecipeLine::counts).mapToDouble(RecipeLine::grams).sum();
    }

    /**
     * The recipe as a mix without its unfinished or wrong lines.
     *
     * @throws IllegalArgumentException if freezing conditions, style or diet are wrong, or all
     *     amounts are zero
     */
    public Mix mix() {
        if (!setup.fault().isEmpty()) {
            throw new IllegalArgumentException(setup.fault());
        }
        if (!intent.fault().isEmpty()) {
            throw new IllegalArgumentException(intent.fault());
        }
        if (!(massG() > 0)) {
            throw Fault.in("all-zero");
        }
        return Mix.of(
                lines.stream()
                        .filter(RecipeLine::counts)
                        .map(
                                line ->
                                        Amount.grams(
                                                line.grams(),
                                                line.ingredient().value().orElseThrow()))
                        .toList());
    }

    /** How it is frozen. */
    public Method method() {
        return setup.method();
    }

    /** The stated bath; empty if its size follows from the batch's mass. */
    public Optional<FreezingSetup.Bath> bath() {
        return setup.value(SetupField.ICE)
                .flatMap(
                        iceG ->
                                setup.value(SetupField.SALT)
                                        .map(g -> new FreezingSetup.Bath(iceG, g)));
    }

    /** The freezer's temperature, °C; −18 by default. */
    public double freezerC() {
        return setup.value(SetupField.FREEZER).orElse(HOME_FREEZER_C);
    }

    /** Overrun, %; 0 by default. */
    public double airPercent() {
        return setup.value(SetupField.AIR).orElse(0.0);
    }

    /** Storage conditions; empty without days. */
    public Optional<StorageConditions> stored() {
        double swingC = setup.value(SetupField.SWING).orElse(0.0);
        Optional<StorageConditions.WarmSpell> warmed =
                setup.value(SetupField.WARM)
                        .flatMap(
                                c ->
                                        setup.value(SetupField.WARM_FOR)
                                                .map(h -> new StorageConditions.WarmSpell(c, h)));
        return setup.value(SetupField.DAYS)
                .map(days -> new StorageConditions(days, swingC, warmed));
    }

    /**
     * Scales the recipe to a new mass, g.
     *
     * @throws IllegalArgumentException if either mass isn't above 0, or the new one exceeds ten
     *     tonnes
     */
    public Recipe weighing(double newMassG) {
        double now = massG();
        if (!(now > 0) || !(newMassG > 0) || !(newMassG <= RecipeLine.MOST_G)) {
            throw Fault.in("scale");
        }
        return times(newMassG / now);
    }

    /** The same with all masses multiplied. */
    public Recipe times(double factor) {
        return of(lines.stream().map(line -> line.times(factor)).toList());
    }

    /** Adds and removes some amounts of ingredients. */
    public Recipe changed(List<AmountChange> changes) {
        Recipe now = this;
        for (AmountChange amountChange : changes) {
            now = now.changed(amountChange);
        }
        return now;
    }

    private Recipe changed(AmountChange amountChange) {
        for (int i = 0; i < lines.size(); i++) {
            RecipeLine line = lines.get(i);
            if (line.counts()
                    && Dextrose.same(
                            line.ingredient().value().orElseThrow(), amountChange.ingredient())) {
                double massG = line.grams() + amountChange.massG();
                return massG < 0.05 ? without(i) : with(i, line.weighing(massG));
            }
        }
        return plus(
                new RecipeLine(
                        RecipeLine.number(amountChange.massG()) + " g",
                        amountChange.ingredient().phrase().shown()));
    }
}
