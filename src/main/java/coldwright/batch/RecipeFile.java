package coldwright.batch;

import coldwright.science.mix.Mix;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Optional;

/**
 * What a recipe file holds. The recipe knows no file; what is asked of it here is refused with file
 * and line.
 *
 * @param file the file's name
 * @param recipe the recipe, with all that is unfinished or wrong in it
 * @param lineage where the batch stands in its row, if a window wrote the file
 * @param unfinished what is unfinished or wrong, in the file's order
 */
public record RecipeFile(
        String file, Recipe recipe, BatchLineage lineage, List<Unfinished> unfinished) {
    /** What can't be done with a recipe because of something unfinished in it. */
    enum Prevents {
        /** The line is left out. */
        NOTHING,
        /** An amount is missing, which a balance finds. */
        ANALYSIS,
        /** It can't be frozen so. */
        EVERYTHING
    }

    /** Something unfinished or wrong on a line, from 1, and what to do about it. */
    record Unfinished(int line, String words, Prevents prevents) {
        static Unfinished of(int line, SetupField field, FreezingSetup setup) {
            String fault = setup.fault(field);
            return fault.isEmpty()
                    ? new Unfinished(
                            line,
                            "\"%s %s\" is unfinished and left out. A bath needs ice and salt; storage needs days, and warming both temperature and hours."
                                    .formatted(field.key(), setup.text(field)),
                            Prevents.NOTHING)
                    : new Unfinished(line, fault, Prevents.EVERYTHING);
        }

        /** What a line of the recipe lacks, whether it is a comment or stated. */
        static Optional<Unfinished> of(int at, RecipeLine line, boolean comment) {
            if (line.counts()) {
                return Optional.empty();
            }
            if (!comment) {
                return Optional.of(
                        new Unfinished(
                                at,
                                "%s has no amount; write its grams after a comma"
                                        .formatted(line.ingredient().value().orElseThrow().name()),
                                Prevents.ANALYSIS));
            }
            String typed = (line.amount().text() + " " + line.name()).strip();
            String lacks =
                    line.fault()
                            .map(fault -> " and left out. " + DisplayText.sentence(fault))
                            .orElse(
                                    line.ingredient().isBlank()
                                            ? " and left out. Write the name of its ingredient."
                                            : ". Write its grams.");
            return Optional.of(
                    new Unfinished(
                            at,
                            "\"%s\" is unfinished%s"
                                    .formatted(RecipeHeadReader.shortened(typed), lacks),
                            Prevents.NOTHING));
        }
    }

    /** What is asked of a recipe. */
    interface Question<T> {
        T of(Recipe recipe) throws BatchFileException;
    }

    public RecipeFile {
        unfinished = List.copyOf(unfinished);
    }

    /**
     * The recipe as a mix.
     *
     * @return all amounts
     * @throws BatchFileException if an amount is missing, or all are zero
     */
    public Mix mix() throws BatchFileException {
        return ask(Prevents.ANALYSIS, Recipe::mix);
    }

    /** Asks something that anything unfinished of this weight prevents. */
    <T> T ask(Prevents from, Question<T> question) throws BatchFileException {
        Optional<Unfinished> first =
                unfinished.stream().filter(one -> one.prevents().compareTo(from) >= 0).findFirst();
        if (first.isPresent()) {
            throw at(first.get());
        }
        try {
            return question.of(recipe);
        } catch (BatchFileException e) {
            throw recipe.massG() > 0 || unfinished.isEmpty()
                    ? new BatchFileException(file, 0, e.getMessage())
                    : at(unfinished.get(0));
        }
    }

    private BatchFileException at(Unfinished one) {
        return new BatchFileException(file, one.line(), one.words());
    }

    /**
     * What is unfinished and prevents nothing.
     *
     * @return for each two short sentences, with file and line
     */
    public List<String> warnings() {
        return unfinished.stream()
                .filter(one -> one.prevents() == Prevents.NOTHING)
                .map(one -> at(one).getMessage())
                .toList();
    }
}
