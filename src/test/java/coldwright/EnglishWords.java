package coldwright;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds English left in texts that a German reader sees. */
public final class EnglishWords {
    /** Small words without which there is hardly an English sentence; none is German. */
    private static final Pattern WORD =
            Pattern.compile(
                    "(?i)(?<![\\p{L}\\d.'’-])(?:the|and|of|is|are|with|without|to|from|not|for|this"
                            + "|that|what|which|your|you|no|has|have|its|it|be|at|as|by|on|or|than|more"
                            + "|less|when|must|can|isn|doesn|gives?|needs?|takes?|step|snippet|freezes)"
                            + "(?![\\p{L}\\d(.=-])");

    /** Code, files and options, placeholders, and names of commands in quotation marks. */
    private static final Pattern CODE =
            Pattern.compile("`[^`]*`|„[^“]*“|--?[a-z]+\\S*|\\S+\\.\\S+|\\b\\p{Lu}{2,}\\b");

    /** English names of ingredients that aren't German too. */
    private static final Pattern INGREDIENT = ingredients();

    private static final List<String> NAMES = names();

    private EnglishWords() {}

    /** The texts in which an English word is left, each with the word. */
    public static List<String> in(Collection<String> texts) {
        return texts.stream()
                .distinct()
                .flatMap(
                        text ->
                                Stream.of(WORD, INGREDIENT)
                                        .map(english -> english.matcher(plain(text)))
                                        .filter(Matcher::find)
                                        .map(found -> found.group() + ": " + text))
                .toList();
    }

    private static Pattern ingredients() {
        String german =
                Shelf.all().stream()
                        .map(one -> one.phrase().in(Locale.GERMAN).toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining("|"));
        return Pattern.compile(
                Shelf.all().stream()
                        .map(Ingredient::name)
                        .filter(name -> !german.contains(name.toLowerCase(Locale.ROOT)))
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|", "(?<![\\p{L}\\d])(?:", ")(?!\\p{L})")));
    }

    private static String plain(String text) {
        String plain = text.replace('\u00a0', ' ');
        for (String name : NAMES) {
            plain = plain.replace(name, "");
        }
        return CODE.matcher(plain).replaceAll(" ");
    }

    private static List<String> names() {
        try {
            return Files.readAllLines(Path.of("src/test/resources/plain-words/german-names.txt"))
                    .stream()
                    .filter(line -> !line.startsWith("#"))
                    .sorted((one, other) -> other.length() - one.length())
                    .collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
