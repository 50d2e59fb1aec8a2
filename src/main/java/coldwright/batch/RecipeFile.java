package coldwright.batch;

import coldwright.science.balance.Target;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A batch as its file states it.
 *
 * @param file the file's name, for messages
 * @param name what the batch is called
 * @param method how it is frozen
 * @param bath ice and salt, if stated
 * @param freezerC the freezer's temperature, °C
 * @param airPercent overrun, %: how much the volume grows by air
 * @param stored how it was kept, if stated
 * @param targets what a balance shall meet
 * @param totalG what a balance shall weigh, g, if stated
 * @param rows its ingredients, at least one
 */
public record RecipeFile(
        String file,
        String name,
        Method method,
        Optional<BathSetup> bath,
        double freezerC,
        double airPercent,
        Optional<StorageConditions> stored,
        List<Target> targets,
        OptionalDouble totalG,
        List<RecipeRow> rows) {
    /** How a batch is frozen. */
    public enum Method {
        /** A flat bag in ice and salt, kneaded. */
        BAG,
        /** A tub in a freezer, left alone. */
        TUB,
        /** A tub in a freezer, shaken now and then. */
        SHAKEN,
        /** A churn with a scraped wall. */
        CHURN
    }

    public RecipeFile {
        targets = List.copyOf(targets);
        rows = List.copyOf(rows);
    }

    /**
     * The batch as a mix.
     *
     * @return all amounts
     * @throws BatchFileException if an amount is missing, or all are zero
     */
    public Mix mix() throws BatchFileException {
        for (RecipeRow row : rows) {
            if (row.massG().isEmpty()) {
                throw new BatchFileException(
                        file,
                        row.line(),
                        "%s has no amount; write its grams after a comma"
                                .formatted(row.ingredient().name()));
            }
        }
        if (rows.stream().allMatch(row -> row.massG().getAsDouble() == 0)) {
            throw new BatchFileException(
                    file, 0, "all amounts are zero; give at least one ingredient some grams");
        }
        return Mix.of(
                rows.stream()
                        .map(row -> Amount.grams(row.massG().getAsDouble(), row.ingredient()))
                        .toList());
    }
}
