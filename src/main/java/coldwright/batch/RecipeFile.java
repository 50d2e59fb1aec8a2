package coldwright.batch;

import coldwright.science.mix.Mix;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The content of a recipe file. Its methods report errors with file and line, which the recipe does
 * not know.
 *
 * @param file the file's name
 * @param recipe the recipe, unfinished or wrong lines included
 * @param lineage position in its series, if a window wrote the file
 * @param unfinished unfinished or wrong entries, in the file's order
 */
public record RecipeFile(
        String file, Recipe recipe, BatchLineage lineage, List<Unfinished> unfinished) {
    /** The use of a recipe that an unfinished entry prevents. */
    enum Prevents {
        /** The line is left out. */
        NOTHING,
        /** An amount is missing, which a balance finds. */
        ANALYSIS,
        /** Freezing conditions are wrong. */
        EVERYTHING
    }

    /** Something unfinished or wrong on a line, from 1, with its fix. */
    record Unfinished(int line, String words, Prevents prevents) {
        static Unfinished of(int line, SetupField field, FreezingSetup setup) {
            String fault = setup.fault(field);
            return fault.isEmpty()
                    ? new Unfinished(
                            line,
                            Fault.of("unfinished.field", field.key(), setup.text(field)),
                            Prevents.NOTHING)
                    : new Unfinished(line, fault, Prevents.EVERYTHING);
        }

        /** The fault of a recipe line, commented out or not. */
        static Optional<Unfinished> of(int at, RecipeLine line, boolean comment) {
            if (line.counts()) {
                return Optional.empty();
            }
            if (!comment) {
                return Optional.of(
                        new Unfinished(
                                at,
                                Fault.of(
                                        "no-amount",
                                        line.ingredient().value().orElseThrow().phrase()),
                                Prevents.ANALYSIS));
            }
            String typed = (line.amount().text() + " " + line.name()).strip();
            String name = RecipeHeadReader.shortened(typed);
            String lacks =
                    line.fault()
                            .map(
                                    fault ->
                                            Fault.of(
                                                    "unfinished.wrong",
                                                    name,
                                                    DisplayText.sentence(fault)))
                            .orElse(
                                    Fault.of(
                                            line.ingredient().isBlank()
                                                    ? "unfinished.nameless"
                                                    : "unfinished.bare",
                                            name));
            return Optional.of(new Unfinished(at, lacks, Prevents.NOTHING));
        }
    }

    public RecipeFile {
        unfinished = List.copyOf(unfinished);
    }

    /**
     * The recipe as a mix.
     *
     * @throws IllegalArgumentException if an amount is missing, or all are zero
     */
    public Mix mix() {
        return ask(Prevents.ANALYSIS, Recipe::mix);
    }

    /** Runs a calculation unless an entry prevents it. */
    <T> T ask(Prevents from, Function<Recipe, T> question) {
        Optional<Unfinished> first =
                unfinished.stream().filter(one -> one.prevents().compareTo(from) >= 0).findFirst();
        if (first.isPresent()) {
            throw at(first.get());
        }
        try {
            return question.apply(recipe);
        } catch (IllegalArgumentException e) {
            throw recipe.massG() > 0 || unfinished.isEmpty()
                    ? Fault.at(file, 0, e.getMessage())
                    : at(unfinished.get(0));
        }
    }

    private IllegalArgumentException at(Unfinished one) {
        return Fault.at(file, one.line(), one.words());
    }

    /**
     * Warnings for the unfinished entries that prevent nothing: two short sentences each, with file
     * and line.
     */
    public List<String> warnings() {
        return unfinished.stream()
                .filter(one -> one.prevents() == Prevents.NOTHING)
                .map(one -> at(one).getMessage())
                .toList();
    }
}
