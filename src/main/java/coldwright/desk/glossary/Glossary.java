package coldwright.desk.glossary;

import coldwright.words.Words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The terms of {@code docs/glossary.md}, found by the words with which a text uses them. */
public final class Glossary {
    private static final String PAGE = "/docs/glossary.md";
    private static final Pattern ROW =
            Pattern.compile("\\| (.+?) \\| (.+?) \\| (.+?) \\| (.+?) \\|");
    private static final Pattern LESSON = Pattern.compile("\\[.*]\\(../lessons/(.+)\\.md\\)");
    private static final Pattern TWO_NAMES = Pattern.compile("(.+) \\((.+)\\)");

    private static final Glossary THIS = new Glossary(page());

    private final List<GlossaryTerm> terms = new ArrayList<>();
    private final Map<String, GlossaryTerm> byWords = new HashMap<>();
    private final String rest;
    private final Pattern pattern;

    private Glossary(String page) {
        StringBuilder text = new StringBuilder();
        page.lines().forEach(line -> text.append(isRow(line) ? "" : line).append('\n'));
        rest = text.toString();
        terms.forEach(term -> namesOf(term.name()).forEach(name -> put(name, term)));
        String any =
                byWords.keySet().stream()
                        .sorted(Comparator.comparingInt(String::length).reversed())
                        .map(Glossary::anyForm)
                        .collect(Collectors.joining("|"));
        pattern = Pattern.compile("(?<![\\p{L}\\d-])(?:" + any + ")(?![\\p{L}\\d])");
    }

    /** The glossary that comes with the program; without terms if none does. */
    public static Glossary ofThisProgram() {
        return THIS;
    }

    private static String page() {
        try (InputStream in = Glossary.class.getResourceAsStream(PAGE)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean isRow(String line) {
        Matcher row = ROW.matcher(line);
        if (row.matches() && !row.group(1).equals("term")) {
            Matcher lesson = LESSON.matcher(row.group(4));
            Optional<String> name =
                    lesson.matches() ? Optional.of(lesson.group(1)) : Optional.empty();
            terms.add(new GlossaryTerm(row.group(1), row.group(2), row.group(3), name));
        }
        return line.startsWith("|");
    }

    private static List<String> namesOf(String term) {
        Matcher two = TWO_NAMES.matcher(term);
        return two.matches() ? List.of(two.group(1), two.group(2)) : List.of(term);
    }

    private void put(String name, GlossaryTerm term) {
        String plural = name.replaceFirst("(?<=[^aeiou])y$", "ie").replaceFirst("x$", "xe") + "s";
        Stream.of(name, plural).forEach(one -> byWords.putIfAbsent(key(one), term));
    }

    /** Abbreviations are found as written, other words with any capitals. */
    private static String key(String words) {
        String plain = words.replace('\u00A0', ' ').replace('’', '\'');
        return isAbbreviation(plain) ? plain : plain.toLowerCase(Locale.ROOT);
    }

    private static boolean isAbbreviation(String words) {
        return words.matches("\\p{Lu}{2,}s?");
    }

    private static String anyForm(String key) {
        String quoted =
                Pattern.quote(key).replace(" ", "\\E[ \u00A0]\\Q").replace("'", "\\E['’]\\Q");
        return isAbbreviation(key) ? quoted : "(?iu:" + quoted + ")";
    }

    /** Where a text uses terms, in order. */
    Matcher matcher(String text) {
        return pattern.matcher(text);
    }

    /**
     * The term that some words are.
     *
     * @param words a term as written, or its plural
     */
    public Optional<GlossaryTerm> term(String words) {
        return Optional.ofNullable(byWords.get(key(words)));
    }

    /** All terms, in alphabetical order. */
    public List<GlossaryTerm> terms() {
        return List.copyOf(terms);
    }

    /** The page without its table, as CommonMark, in the language shown. */
    public String rest() {
        return shown("rest", rest);
    }

    /** A text in the language shown; the English one if there is no translation. */
    static String shown(String key, String english) {
        String text = Words.of("desk.glossary").shown(key);
        return text.equals(key) ? english : text;
    }
}
