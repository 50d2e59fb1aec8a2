package coldwright.desk.batch.model;

import coldwright.desk.messages.Messages;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.List;

/**
 * A component of a batch, for figures of its composition.
 *
 * @param key its name in the words files, after {@code batch.part.}
 * @param percent of the mass
 */
public record BatchShare(String key, double percent) {
    /** Its name in the language shown. */
    public String name() {
        return Messages.of("batch.part." + key);
    }

    private static final double NOTABLE_PERCENT = 0.05;

    /** The components of a mix in a fixed order, without those too small to draw. */
    public static List<BatchShare> of(Mix mix) {
        List<BatchShare> parts = new ArrayList<>();
        parts.add(new BatchShare("water", mix.waterPercent()));
        parts.add(new BatchShare("sugars", mix.sugarsPercent()));
        parts.add(new BatchShare("fat", mix.fatPercent()));
        parts.add(new BatchShare("protein", mix.proteinPercent()));
        parts.add(new BatchShare("alcohol", mix.alcoholPercent()));
        parts.add(new BatchShare("salt", mix.saltPercent()));
        double named = parts.stream().mapToDouble(BatchShare::percent).sum();
        parts.add(new BatchShare("rest", Math.max(0, 100 - named)));
        parts.removeIf(part -> part.percent < NOTABLE_PERCENT);
        return List.copyOf(parts);
    }
}
