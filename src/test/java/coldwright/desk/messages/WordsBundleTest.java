package coldwright.desk.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Each bundle has the same texts in each language, and the window shows no others. */
class WordsBundleTest {
    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final Path DESK = Path.of("src/main/java/coldwright/desk");
    private static final Pattern KEY =
            Pattern.compile(
                    "(?:Messages\\.of|TextControls\\.command)\\(\\s*\"([^\"]+)\"\\s*([+,)])");
    private static final Pattern PLACE =
            Pattern.compile("%(?:(\\d)\\$)?([stTdDgG]|\\.\\d[ftTdDgG])");

    /** What shows or speaks its first text as it stands. */
    private static final Pattern SAID =
            Pattern.compile(
                    "(?:TextControls\\.label|TextControls\\.button|new Label|new Button|new CodeSentence|new CollapsibleSection"
                            + "|setText|setPromptText|setTitle|setAccessibleText|setAccessibleHelp"
                            + "|notice\\.set|progress\\.set|notify|tell|say)\\(\\s*\"([^\"]*)\"");

    /** The program's own name is the same in all languages. */
    private static final Set<String> NAMES = Set.of("Coldwright");

    /** Letters, and then a blank or a full stop or the end: words, and no key. */
    private static final Pattern WORDS = Pattern.compile("\\p{L}.*[ .]|^\\p{Lu}\\p{Ll}+$");

    /** A sentence anywhere in the sources: a capital, and a blank after a word. */
    private static final Pattern SENTENCE =
            Pattern.compile("\"(\\p{Lu}\\p{Ll}*[’']?\\p{Ll}* \\p{Ll}[^\"]*)\"");

    /** These speak where no window is, or to those who mend the program. */
    private static final Set<String> NOT_IN_THE_WINDOW = Set.of("DisplayProbe.java");

    static List<Path> bundles() throws IOException {
        try (Stream<Path> all = Files.walk(RESOURCES)) {
            return all.filter(file -> file.endsWith("words.properties")).toList();
        }
    }

    @Test
    void theBundleOfTheWindowIsAmongThem() throws IOException {
        assertTrue(bundles().contains(RESOURCES.resolve("coldwright/desk/words.properties")));
        assertTrue(english().size() > 200, "too few words were read");
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void eachLanguageHasTheSameKeys(Path bundle) throws IOException {
        for (Path translation : translations(bundle)) {
            assertEquals(
                    new TreeSet<>(read(bundle).keySet()),
                    new TreeSet<>(read(translation).keySet()));
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void eachTextTakesTheSameValuesInEachLanguage(Path bundle) throws IOException {
        for (Path translation : translations(bundle)) {
            Properties words = read(translation);
            read(bundle)
                    .forEach(
                            (key, text) ->
                                    assertEquals(
                                            places((String) text),
                                            places(words.getProperty((String) key)),
                                            translation + ": values of " + key));
        }
    }

    @Test
    void eachKeyThatTheSourcesNameExists() throws IOException {
        Set<Object> keys = english().keySet();
        List<String> lost = new ArrayList<>();
        int seen = 0;
        for (Path file : sources()) {
            Matcher matcher = KEY.matcher(Files.readString(file));
            while (matcher.find()) {
                seen++;
                String key = matcher.group(1);
                boolean beginning = matcher.group(2).equals("+");
                if (beginning
                        ? keys.stream().noneMatch(one -> ((String) one).startsWith(key))
                        : !keys.contains(key)) {
                    lost.add(file.getFileName() + ": " + key);
                }
            }
        }
        assertTrue(seen > 150, "too few keys were seen: " + seen);
        assertEquals(List.of(), lost);
    }

    @Test
    void noViewAndNoModelSaysWhatStandsInItsOwnSource() throws IOException {
        List<String> said = new ArrayList<>();
        Set<Object> keys = english().keySet();
        for (Path file : sources()) {
            if (!NOT_IN_THE_WINDOW.contains(file.getFileName().toString())) {
                String text = Files.readString(file);
                for (Pattern pattern : List.of(SAID, SENTENCE)) {
                    Matcher matcher = pattern.matcher(text);
                    while (matcher.find()) {
                        String words = matcher.group(1);
                        boolean key = keys.contains(words);
                        if (WORDS.matcher(words).find() && !NAMES.contains(words) && !key) {
                            said.add(file.getFileName() + ": " + words);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), said);
    }

    @Test
    void theScanFindsWordsWhereTheyStand() {
        assertTrue(SAID.matcher("TextControls.label(\n    \"Put away\", look)").find());
        assertTrue(WORDS.matcher("Put away").find());
        assertTrue(WORDS.matcher("Run").find());
        assertFalse(WORDS.matcher("lesson-title").find());
        assertTrue(SENTENCE.matcher("return \"It ran to its end.\";").find());
    }

    /** Which value each place takes and how; a translation may take them in another order. */
    private static List<String> places(String text) {
        List<String> places = new ArrayList<>();
        int next = 1;
        for (MatchResult place : PLACE.matcher(text).results().toList()) {
            boolean chosen = place.group(1) != null;
            places.add((chosen ? place.group(1) : String.valueOf(next)) + place.group(2));
            next += chosen ? 0 : 1;
        }
        return places.stream().sorted().distinct().toList();
    }

    private static Properties english() throws IOException {
        return read(RESOURCES.resolve("coldwright/desk/words.properties"));
    }

    private static List<Path> translations(Path bundle) throws IOException {
        try (Stream<Path> beside = Files.list(bundle.getParent())) {
            List<Path> all =
                    beside.filter(file -> file.getFileName().toString().startsWith("words_"))
                            .toList();
            assertTrue(!all.isEmpty(), "no translation of " + bundle);
            return all;
        }
    }

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader text = Files.newBufferedReader(file)) {
            words.load(text);
        }
        return words;
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(DESK)) {
            return all.filter(file -> file.toString().endsWith(".java")).toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }
}
