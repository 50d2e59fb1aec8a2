package coldwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;

/** Recipes to begin with, each a file. */
public enum RecipeExample {
    SORBET,
    OAT,
    CARAMEL,
    COFFEE;

    /** The recipe, with its ingredients in the language shown. */
    public Recipe recipe() {
        String file = name().toLowerCase(Locale.ROOT) + ".batch";
        try (InputStream in = RecipeExample.class.getResourceAsStream("examples/" + file)) {
            Recipe recipe = RecipeFileReader.read(in, file).recipe();
            return recipe.of(recipe.lines().stream().map(RecipeLine::shown).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
