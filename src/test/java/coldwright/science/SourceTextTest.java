package coldwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;
import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The calculator gives numbers, enums and phrases: its texts are in its words files. */
class SourceTextTest {
    private static final Path SCIENCE = Path.of("src/main/java/coldwright/science");

    /** A literal of so many words is a text; shorter ones are keys, units and names. */
    private static final int FEWEST_WORDS = 3;

    private static final int MOST_SENTENCES = 2;
    private static final int MOST_WORDS_A_SENTENCE = 25;

    /** Calls whose texts become part of an exception message. */
    private static final Set<String> CHECKS =
            Set.of("that", "within", "notNegative", "positive", "require", "amount", "Range");

    private static final Pattern PLACE = Pattern.compile("%(\\d\\$)?(\\.\\d)?[sdf%]");
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?](\\s|$)");
    private static final Pattern JOINT = Pattern.compile("[;:]\\s");

    /** A protected name, in the language of its place. */
    private static final Set<String> NAMES = Set.of("dairy ice cream");

    /** What a message is about, put together before its sentence. */
    private static final Set<String> SUBJECTS = Set.of("%s of own ingredient \\\"%s\\\"");

    /** Words that words.md replaces: each with what to write. */
    private static final Pattern PRIVATE_SENSES =
            Pattern.compile(
                    "\\b(foretell|foretold|reckon\\w*|mend\\w*|anew|honestly|shall)\\b"
                            + "|(?<!there )\\bis no \\w+|\\b(holds|cannot)\\b");

    /** A string literal of the sources, and whether it is part of an exception message. */
    private record Literal(String file, String text, boolean message) {
        int words() {
            return (int)
                    Arrays.stream(PLACE.matcher(text).replaceAll(" ").split("\\s+", -1))
                            .filter(
                                    word ->
                                            word.codePoints().filter(Character::isLetter).count()
                                                    > 1)
                            .count();
        }

        /** Whether it is a regular expression with alternatives, not a text. */
        boolean isPattern() {
            return text.contains("|");
        }

        @Override
        public String toString() {
            return file + ": " + text;
        }
    }

    @Test
    void noTextIsInTheSources() throws IOException {
        Set<String> shelf = Shelf.all().stream().map(Ingredient::name).collect(Collectors.toSet());
        List<Literal> all = literals();
        assertTrue(all.size() > 500, "too few literals were read: " + all.size());
        assertEquals(
                List.of(),
                all.stream()
                        .filter(one -> !one.message() && one.words() >= FEWEST_WORDS)
                        .filter(one -> !shelf.contains(one.text()) && !NAMES.contains(one.text()))
                        .filter(one -> !one.isPattern() && !SUBJECTS.contains(one.text()))
                        .toList());
    }

    @Test
    void messagesAreShortAndInPlainWords() throws IOException {
        List<Literal> messages = literals().stream().filter(Literal::message).toList();
        assertTrue(messages.size() > 100, "too few messages were read: " + messages.size());
        assertEquals(List.of(), messages.stream().filter(one -> !isPlain(one)).toList());
    }

    private static boolean isPlain(Literal one) {
        List<String> sentences =
                Arrays.stream(SENTENCE_END.split(one.text(), -1))
                        .filter(part -> !part.isBlank())
                        .toList();
        return sentences.size() <= MOST_SENTENCES
                && sentences.stream()
                        .allMatch(
                                part ->
                                        part.split("\\s+", -1).length <= MOST_WORDS_A_SENTENCE
                                                && JOINT.matcher(part).results().count() <= 1)
                && !PRIVATE_SENSES.matcher(one.text()).find();
    }

    @Test
    void theScanTellsTextsFromMessages() {
        List<Literal> found =
                literals(
                        "F",
                        "// \"not a literal at all\"\n"
                                + "Phrase.of(\"a.b\", \"two words\", \"it is a text\");\n"
                                + "throw new IllegalArgumentException(\n"
                                + "    (x ? \"%s is a %s message\" : \"\").formatted(y));\n"
                                + "Require.within(\"mass of the mix\", x, new Range(0, 1, \"g\"));");
        assertEquals(
                List.of("it is a text"),
                found.stream()
                        .filter(one -> !one.message() && one.words() >= FEWEST_WORDS)
                        .map(Literal::text)
                        .toList());
        assertEquals(4, found.stream().filter(Literal::message).count());
        assertFalse(isPlain(new Literal("F", "this is no sugar", true)));
        assertFalse(isPlain(new Literal("F", "one; two; three", true)));
        assertTrue(isPlain(new Literal("F", "x is 2; it must be 3 or more. Add salt.", true)));
    }

    private static List<Literal> literals() throws IOException {
        List<Literal> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SCIENCE)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
                all.addAll(literals(file.getFileName().toString(), Files.readString(file)));
            }
        }
        return all;
    }

    private static List<Literal> literals(String file, String text) {
        JavaSource source = JavaSource.of(text);
        List<Literal> found = new ArrayList<>();
        Deque<Boolean> within = new ArrayDeque<>();
        String before = "";
        for (JavaToken token : source.code()) {
            String word = source.text(token);
            if (token.kind() == JavaToken.Kind.OPEN) {
                boolean message = before.endsWith("Exception") || CHECKS.contains(before);
                within.push(message || Boolean.TRUE.equals(within.peek()));
            } else if (token.kind() == JavaToken.Kind.CLOSE) {
                within.pop();
            } else if (token.kind() == JavaToken.Kind.STRING) {
                String plain = word.substring(1, word.length() - 1);
                found.add(new Literal(file, plain, Boolean.TRUE.equals(within.peek())));
            }
            before = word;
        }
        return found;
    }
}
