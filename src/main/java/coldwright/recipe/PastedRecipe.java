package coldwright.recipe;

import coldwright.recipe.LineReading.State;
import coldwright.science.mix.Ingredient;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A whole recipe as pasted from a page, a table or a note.
 *
 * @param title its first line if that names no ingredient; empty if there is none
 * @param lines its lines of ingredients, in their order, understood or not
 * @param notes everything else: headings, yields and the method
 */
public record PastedRecipe(String title, List<LineReading> lines, String notes) {
    /** Longer texts are cut off here. */
    private static final int MOST_CHARACTERS = 60_000;

    private static final int MOST_LINES = 400;
    private static final int PROSE_WORDS = 7;
    private static final Pattern LIST =
            Pattern.compile("(?iu)^\\W*(?:ingredients?|zutaten|you will need|du brauchst)\\b.*");
    private static final Pattern METHOD =
            Pattern.compile(
                    "(?iu)^\\W*(?:method|directions|instructions|preparation|steps|zubereitung|anleitung|so geht'?s)\\b\\W*");
    private static final Pattern YIELD =
            Pattern.compile(
                    "(?iu)^\\W*(?:serves|makes|yields?|ergibt|portionen|für \\d|prep|cook|total time|servings?|zutaten für)\\b.*");
    private static final Pattern TABLE =
            Pattern.compile(
                    "(?iu)[\\s|:;,\\t=-]*(?:(?:ingredients?|zutat(?:en)?|amount|menge|grams?|gramm|g|unit|einheit|quantity)[\\s|:;,\\t-]*)*");
    private static final Pattern SENTENCE = Pattern.compile("(?<=[\\p{L}%)])[.!]\\s+(?=\\p{Lu})");
    private static final Pattern NEXT =
            Pattern.compile(
                    "(?iu)\\s*(?:[,;]|\\s\\+|\\s(?:and|und|sowie))\\s+(?=(?:\\d|[½¼¾⅓⅔]|an? (?:pinch|dash)|(?:the )?(?:juice|zest)\\b|(?:de[rn] )?saft\\b|(?:one|two|three|half|eine?|zwei|drei)\\s))");
    private static final Pattern LEAD = Pattern.compile("(?u)^[^\\d½¼¾]*?(?=\\d|[½¼¾])");

    public PastedRecipe {
        lines = List.copyOf(lines);
    }

    /**
     * Reads a pasted text.
     *
     * @param text the text; more than 60,000 characters are cut off
     * @param own ingredients that are searched before those of the shelf
     * @return what was understood, line by line
     */
    public static PastedRecipe read(String text, Collection<Ingredient> own) {
        return new Reader(own).read(text.substring(0, Math.min(text.length(), MOST_CHARACTERS)));
    }

    private static final class Reader {
        private final Collection<Ingredient> own;
        private final List<LineReading> lines = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private String title = "";
        private boolean method;
        private boolean begun;

        /** Whether the head of a table says that its numbers are grams. */
        private boolean grams;

        Reader(Collection<Ingredient> own) {
            this.own = own;
        }

        PastedRecipe read(String text) {
            text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(this::line);
            return new PastedRecipe(title, lines, String.join("\n", notes));
        }

        private void line(String line) {
            if (METHOD.matcher(line).matches()) {
                method = true;
            } else if (method || lines.size() >= MOST_LINES) {
                notes.add(line);
            } else if (LIST.matcher(line).matches() && !TABLE.matcher(line).matches()) {
                begun = true;
            } else if (YIELD.matcher(line).matches()) {
                notes.add(line);
            } else if (TABLE.matcher(line).matches()) {
                grams = line.matches("(?iu).*\\b(?:grams?|gramm|g)\\W*");
            } else if (!runIn(line)) {
                single(grams && line.matches(".*\\d") ? line + " g" : line);
            }
        }

        private void single(String line) {
            LineReading read = IngredientLine.read(line, own);
            boolean amount = !read.amount().isEmpty();
            if (!begun
                    && read.state() != State.UNDERSTOOD
                    && (!amount || read.state() == State.UNKNOWN)) {
                title = line;
            } else if (read.state() == State.OTHER || !amount && isProse(line)) {
                notes.add(line);
            } else if (read.state() == State.UNKNOWN && !amount && read.suggestions().isEmpty()) {
                notes.add(line);
            } else {
                lines.add(read);
            }
            begun = true;
        }

        private static boolean isProse(String line) {
            return line.split("\\s+").length >= PROSE_WORDS || line.matches(".*\\p{L}{2}[.!]");
        }

        /** Several ingredients in one line, with or without a sentence around them. */
        private boolean runIn(String line) {
            String[] sentences = SENTENCE.split(line, 2);
            String first = sentences[0].replaceFirst("[.!]$", "");
            Matcher lead = LEAD.matcher(first);
            String before = lead.find() ? lead.group().strip() : "";
            String[] pieces = NEXT.split(first.substring(before.isEmpty() ? 0 : lead.end()));
            if (pieces.length < 2) {
                return false;
            }
            List<LineReading> read =
                    Arrays.stream(pieces).map(piece -> IngredientLine.read(piece, own)).toList();
            boolean all =
                    read.stream().allMatch(one -> !one.amount().isEmpty() && !one.name().isEmpty());
            if (!all || read.stream().filter(one -> !one.parts().isEmpty()).count() < 2) {
                return false;
            }
            if (!begun && before.endsWith(":")) {
                title = before.substring(0, before.length() - 1);
            }
            begun = true;
            lines.addAll(read);
            if (sentences.length > 1) {
                notes.add(sentences[1]);
            }
            return true;
        }
    }
}
