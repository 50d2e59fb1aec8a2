package coldwright.desk.batch.model;

import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a batch, for pictures of what is in it.
 *
 * @param key its name among the window's words, after {@code batch.part.}
 * @param percent of the mass
 */
public record BatchShare(String key, double percent) {
    private static final double NOTABLE_PERCENT = 0.05;

    /**
     * What a mix is made of.
     *
     * @param mix the mix
     * @return its parts in a fixed order, what is too little to draw left out; their sum is 100 but
     *     for that
     */
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
