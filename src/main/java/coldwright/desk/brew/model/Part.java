package coldwright.desk.brew.model;

import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a batch, for pictures of what is in it.
 *
 * @param key its name among the window's words, after {@code batch.part.}
 * @param percent of the mass
 */
public record Part(String key, double percent) {
    private static final double TELLING_PERCENT = 0.05;

    /**
     * What a mix is made of.
     *
     * @param mix the mix
     * @return its parts in a fixed order, what is too little to draw left out; their sum is 100 but
     *     for that
     */
    public static List<Part> of(Mix mix) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("water", mix.waterPercent()));
        parts.add(new Part("sugars", mix.sugarsPercent()));
        parts.add(new Part("fat", mix.fatPercent()));
        parts.add(new Part("protein", mix.proteinPercent()));
        parts.add(new Part("alcohol", mix.alcoholPercent()));
        parts.add(new Part("salt", mix.saltPercent()));
        double named = parts.stream().mapToDouble(Part::percent).sum();
        parts.add(new Part("rest", Math.max(0, 100 - named)));
        parts.removeIf(part -> part.percent < TELLING_PERCENT);
        return List.copyOf(parts);
    }
}
