package coldwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Texts for people use plain words and the trade's own terms, and come from the bundles. */
class PlainWordsTest {
    private static final Path LISTS = Path.of("src/test/resources/plain-words");
    private static final Path SOURCES = Path.of("src/main/java/coldwright");
    private static final Path RESOURCES = Path.of("src/main/resources");

    /** Not prose: code, comments, links, quotations of titles and of what a file has. */
    private static final Pattern NOT_PROSE =
            Pattern.compile(
                    "<!--.*?-->|`[^`]*`|\\]\\([^)]*\\)|https?://\\S+|“[^”]*”|\"[^\"]*\"|(?<=[ (])\\*[^*]+\\*");

    private static final Set<String> PROSE_BLOCKS = Set.of("forecast", "teacher");

    /** Written by a test from what others' tables are called. */
    private static final Set<String> GENERATED = Set.of("accuracy.md");

    /** Titles of works are quoted as printed. */
    private static final Set<String> CITATIONS = Set.of("sources.md", "third-party.md");

    /** Paragraphs of a page, of which each sentence is a caution or an invitation of its own. */
    private static final Set<String> PARAGRAPHS =
            Set.of("home.what", "home.caution", "trust.what", "known-own", "rest");

    private static final Pattern SENTENCE_END =
            Pattern.compile("[\\p{Ll}\\p{N})”“\"%][.!?](?=\\s+[\\p{Lu}„“])");

    private static final Pattern VALUE = Pattern.compile("%(?:\\d\\$)?[\\d.]*[sdf]");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Pattern NAMES_AN_ERROR =
            Pattern.compile("throw|\\w*(?:Exception|Error)|log|Require|Logger|getLogger|assert");

    @Test
    void noTextHasABannedPhrase() throws IOException {
        Map<Pattern, String> banned = banned("banned.txt");
        List<String> found = new ArrayList<>();
        int lines = 0;
        for (Map.Entry<String, String> line : prose().entrySet()) {
            lines++;
            for (Map.Entry<Pattern, String> one : banned.entrySet()) {
                Matcher matcher = one.getKey().matcher(line.getValue());
                if (matcher.find()) {
                    found.add(
                            "%s: “%s”: write %s"
                                    .formatted(line.getKey(), matcher.group(), one.getValue()));
                }
            }
        }
        assertTrue(lines > 3000, "too few lines were read: " + lines);
        assertEquals("", String.join("\n", found));
    }

    @Test
    void everyMessageHasAtMostTwoSentences() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path bundle : files(RESOURCES, ".properties")) {
            read(bundle)
                    .forEach(
                            (key, text) -> {
                                long ends = SENTENCE_END.matcher((String) text).results().count();
                                if (ends > 1 && !PARAGRAPHS.contains(key)) {
                                    found.add(bundle + ": " + key + ": " + text);
                                }
                            });
        }
        assertEquals("", String.join("\n", found));
    }

    @Test
    void sentencesAreInTheBundlesAndNotInJava() throws IOException {
        Set<String> listed = new TreeSet<>();
        for (String line : Files.readAllLines(LISTS.resolve("classes-with-sentences.txt"))) {
            if (!line.startsWith("#")) {
                assertTrue(line.matches("[a-zA-Z.]+ \\| .+"), "a class and its reason: " + line);
                listed.add(line.replaceFirst(" .*", ""));
            }
        }
        Map<String, List<String>> found = new TreeMap<>();
        for (Path file : files(SOURCES, ".java")) {
            List<String> sentences = sentences(Files.readString(file));
            if (!sentences.isEmpty()) {
                found.put(
                        SOURCES.relativize(file).toString().replace('/', '.').replace(".java", ""),
                        sentences);
            }
        }
        Map<String, List<String>> unlisted = new TreeMap<>(found);
        unlisted.keySet().removeAll(listed);
        assertEquals(Map.of(), unlisted, "move these to words.properties");
        listed.removeAll(found.keySet());
        assertEquals(Set.of(), listed, "these have no sentences any more: take them off the list");
    }

    @Test
    void theGlossaryIsWholeInGerman() throws IOException {
        Properties german = read(RESOURCES.resolve("coldwright/desk/glossary/words_de.properties"));
        Matcher row =
                Pattern.compile("(?m)^\\| (.+?) \\| (.+?) \\| (.+?) \\| .+? \\|$")
                        .matcher(Files.readString(Path.of("docs/glossary.md")));
        Set<String> keys = new TreeSet<>(Set.of("rest"));
        while (row.find()) {
            String term = row.group(1).replace(' ', '-');
            if (!term.equals("term")) {
                keys.addAll(Set.of("name." + term, "meaning." + term));
                if (WORD.matcher(row.group(3).replaceAll("`[^`]*`", "")).find()) {
                    keys.add("by." + term);
                }
            }
        }
        assertTrue(keys.size() > 120, keys::toString);
        assertEquals(keys, german.stringPropertyNames());
    }

    /** Italics of these pages that are no button: headings of a page, and a message. */
    private static final Set<String> NO_BUTTONS = Set.of("Report a hole", "Published");

    @Test
    void theDocsNameButtonsAsTheWindowDoes() throws IOException {
        Set<Object> texts = new TreeSet<>();
        read(RESOURCES.resolve("coldwright/desk/words.properties"))
                .forEach((key, text) -> texts.add(((String) text).replace("…", "")));
        Set<String> named = new TreeSet<>();
        for (String page :
                List.of(
                        "README.md",
                        "docs/batch-file.md",
                        "docs/lesson-format.md",
                        "docs/security.md",
                        "docs/writing-lessons.md")) {
            Matcher italics =
                    Pattern.compile("(?<![*\\w])\\*(\\p{Lu}[^*]{2,70})\\*(?!\\*)")
                            .matcher(Files.readString(Path.of(page)));
            while (italics.find()) {
                named.add(italics.group(1).replaceAll("\\s+", " "));
            }
        }
        assertTrue(named.size() > 10, named::toString);
        named.removeAll(texts);
        named.removeAll(NO_BUTTONS);
        assertEquals(Set.of(), named);
    }

    @Test
    void theScansFindWhatTheyLookFor() throws IOException {
        assertEquals(
                List.of("now it froze"), sentences("class A { String a = \"now it froze\"; }"));
        assertEquals(List.of(), sentences("void a() { throw new E(\"now it froze\"); }"));
        assertEquals(List.of(), sentences("@Command(name = \"now it froze\") class A {}"));
        assertEquals(List.of(), sentences("String css = \"text-align: left; margin: 0 auto\";"));
        String spared =
                NOT_PROSE.matcher("see “Mend it” and `mend` and let it stand").replaceAll("");
        assertFalse(
                banned("banned.txt").keySet().stream().anyMatch(one -> one.matcher(spared).find()),
                spared);
        assertTrue(
                banned("banned.txt").keySet().stream()
                        .anyMatch(one -> one.matcher("it is no gum").find()));
        assertEquals(1, SENTENCE_END.matcher("Add 3.5 % of it. Then stir.").results().count());
    }

    @Test
    void germanTextsHaveNoEnglishAndOneTermForOneThing() throws IOException {
        List<String> found = new ArrayList<>();
        List<String> all = new ArrayList<>();
        Map<Pattern, String> german = banned("banned-german.txt");
        for (Path bundle : files(RESOURCES, "words_de.properties")) {
            boolean shelf = bundle.toString().contains("shelf"); // as cooks call them
            read(bundle)
                    .forEach(
                            (key, text) -> {
                                all.add((String) text);
                                for (Map.Entry<Pattern, String> one : german.entrySet()) {
                                    String prose = ((String) text).replaceAll("`[^`]*`", "");
                                    if (!shelf && one.getKey().matcher(prose).find()) {
                                        found.add(key + ": " + text + ": write " + one.getValue());
                                    }
                                }
                            });
        }
        assertTrue(all.size() > 1500, "too few texts were read: " + all.size());
        assertEquals("", String.join("\n", found));
        assertEquals(List.of(), EnglishWords.in(all));
    }

    private static Map<Pattern, String> banned(String list) throws IOException {
        Map<Pattern, String> banned = new LinkedHashMap<>();
        for (String line : Files.readAllLines(LISTS.resolve(list))) {
            if (!line.startsWith("#")) {
                String[] halves = line.split(" => ", 2);
                banned.put(Pattern.compile(halves[0], Pattern.CASE_INSENSITIVE), halves[1]);
            }
        }
        return banned;
    }

    /** Each line of prose by its place: docs, lessons, texts in Java and English bundles. */
    private static Map<String, String> prose() throws IOException {
        Map<String, String> prose = new LinkedHashMap<>();
        List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        pages.addAll(files(Path.of("docs"), ".md"));
        pages.addAll(files(Path.of("lessons"), ".md"));
        pages.addAll(files(RESOURCES, ".md"));
        for (Path page : pages) {
            String name = page.getFileName().toString();
            if (!GENERATED.contains(name) && !CITATIONS.contains(name)) {
                prose(page, prose);
            }
        }
        for (Path source : files(SOURCES, ".java")) {
            JavaSource java = JavaSource.of(Files.readString(source));
            java.tokens().stream()
                    .map(java::text)
                    .filter(text -> text.matches("\"[^\"]+ [^\"]+ [^\"]+\""))
                    .forEach(text -> prose.put(source + " " + text, text.replace("\"", "")));
        }
        for (Path bundle : files(RESOURCES, "words.properties")) {
            read(bundle)
                    .forEach(
                            (key, text) ->
                                    prose.put(
                                            bundle + " " + key,
                                            NOT_PROSE.matcher((String) text).replaceAll(" ")));
        }
        return prose;
    }

    private static void prose(Path page, Map<String, String> prose) throws IOException {
        List<String> lines = Files.readAllLines(page);
        boolean code = false;
        boolean block = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.strip().startsWith("```")) {
                block = !block;
                code = block && !PROSE_BLOCKS.contains(line.strip().substring(3).strip());
            } else if (!code && !line.startsWith("    ")) {
                prose.put(page + ":" + (i + 1), NOT_PROSE.matcher(line).replaceAll(" "));
            }
        }
    }

    /** Texts of three or more words that are neither an error's nor an annotation's. */
    private static List<String> sentences(String java) {
        List<String> sentences = new ArrayList<>();
        boolean error = false;
        List<JavaToken> tokens = JavaSource.of(java).tokens();
        for (JavaToken token : tokens) {
            String text = java.substring(token.start(), token.end());
            if (text.equals(";") || text.equals("{") || text.equals("}")) {
                error = false;
            } else if (text.startsWith("@") || NAMES_AN_ERROR.matcher(text).matches()) {
                error = true;
            } else if (text.startsWith("\"") && !error && isSentence(text)) {
                sentences.add(text.substring(1, text.length() - 1));
            }
        }
        return sentences;
    }

    /** Words with single spaces between them: no pattern, no markup, no list of names. */
    private static boolean isSentence(String literal) {
        if (literal.matches("(?s).*(?:[<>{}\\[\\]|\\\\]|\\w: \\w+;|\\w-\\w+:).*")) {
            return false;
        }
        String filled = VALUE.matcher(literal).replaceAll("it");
        Matcher three = Pattern.compile("\\p{L}{2,}[,;:]? \\p{L}+[,;:]? \\p{L}+").matcher(filled);
        return three.find() && WORD.matcher(literal).results().count() >= 2;
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !ending.equals(".properties") || isBundle(file))
                    .sorted()
                    .collect(Collectors.toList());
        }
    }

    private static boolean isBundle(Path file) {
        return file.getFileName().toString().startsWith("words");
    }

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader text = Files.newBufferedReader(file)) {
            words.load(text);
        }
        return words;
    }
}
