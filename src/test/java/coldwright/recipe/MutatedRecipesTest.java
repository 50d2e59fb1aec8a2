package coldwright.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.recipe.LineReading.Part;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** The sixty recipes with signs and words left out, doubled, swapped or replaced by rubbish. */
class MutatedRecipesTest {
    private static final int RECIPES = 100 * Integer.getInteger("laws.cases", 1);
    private static final long SEED = 20261130;

    private static final List<String> RUBBISH =
            List.of(
                    "1/0",
                    "0",
                    "-3",
                    "999999999999",
                    "1e308",
                    "NaN",
                    "½½",
                    "%",
                    "(",
                    ")",
                    "((",
                    "]",
                    "\\",
                    "$1",
                    "oder",
                    "or",
                    " or or ",
                    ",,",
                    "1,2,3",
                    "1.000.000",
                    "\u0000",
                    "\u202e",
                    "😀",
                    "ß",
                    "''",
                    "x x x",
                    "TL EL",
                    "pinch of",
                    "0/4",
                    "1-1",
                    "3–",
                    "bis",
                    ":",
                    "|",
                    "\t",
                    "of of",
                    "Saft von",
                    "juice of",
                    "100 %%",
                    "\ud800");

    @Test
    void noneThrowsAndNoMassIsWild() throws IOException, URISyntaxException {
        List<String> texts = new ArrayList<>();
        for (Path recipe : WrittenRecipesTest.recipes()) {
            texts.add(Files.readString(recipe));
        }
        Random random = new Random(SEED);
        int lines = 0;
        for (int i = 0; i < RECIPES; i++) {
            String text = mutated(texts.get(random.nextInt(texts.size())), random);
            PastedRecipe read = PastedRecipe.read(text, List.of());
            for (LineReading line : read.lines()) {
                check(line, text);
                lines++;
            }
        }
        assertTrue(lines > 3 * RECIPES, lines + " lines read");
    }

    private static void check(LineReading line, String text) {
        List<Part> all = new ArrayList<>(line.parts());
        line.choices().forEach(choice -> all.addAll(choice.parts()));
        for (Part part : all) {
            assertTrue(part.massG() >= 0 && part.massG() <= 1e6, () -> line + "\n" + text);
            assertTrue(!part.how().english().isBlank());
        }
        boolean understood = line.state() == LineReading.State.UNDERSTOOD;
        assertEquals(understood, !line.parts().isEmpty(), line::toString);
        assertEquals(understood, line.why().isEmpty(), line::toString);
    }

    private static String mutated(String text, Random random) {
        StringBuilder changed = new StringBuilder(text);
        int times = 1 + random.nextInt(8);
        for (int i = 0; i < times; i++) {
            int at = random.nextInt(changed.length());
            int end = Math.min(changed.length(), at + 1 + random.nextInt(6));
            switch (random.nextInt(4)) {
                case 0 -> changed.insert(at, RUBBISH.get(random.nextInt(RUBBISH.size())));
                case 1 -> changed.delete(at, Math.min(end, changed.length() - 1));
                case 2 -> changed.insert(at, changed.substring(at, end));
                default -> changed = swapped(changed.toString(), random);
            }
        }
        return changed.toString();
    }

    private static StringBuilder swapped(String text, Random random) {
        List<String> words = new ArrayList<>(List.of(text.split(" ", -1)));
        int one = random.nextInt(words.size());
        int other = random.nextInt(words.size());
        String kept = words.get(one);
        words.set(one, words.get(other));
        words.set(other, kept);
        return new StringBuilder(words.stream().collect(Collectors.joining(" ")));
    }
}
