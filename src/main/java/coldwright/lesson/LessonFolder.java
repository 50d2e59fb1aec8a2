package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.text.NearestWord;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.jar.JarFile;
import java.util.stream.Collectors;

/** The lessons of one folder, in the order of their file names: {@code 01-…}, {@code 02-…}. */
public final class LessonFolder {
    private static final String FOLDER = "lessons";
    private static final String COURSE_BOOK = "docs/course.md";

    /** The minimum length of a word for guessing a lesson's name. */
    private static final int SHORTEST_WORD = 4;

    private final Map<String, Supplier<Lesson>> sources;
    private Set<String> texts = Set.of();

    private LessonFolder(Map<String, Supplier<Lesson>> sources) {
        this.sources = sources;
    }

    /** The lessons that come with the program; none if it has none. */
    public static LessonFolder ofThisProgram() {
        try {
            Path program =
                    Path.of(
                            LessonFolder.class
                                    .getProtectionDomain()
                                    .getCodeSource()
                                    .getLocation()
                                    .toURI());
            return Files.isDirectory(program)
                    ? in(program.resolve(FOLDER))
                    : new LessonFolder(inJar(program));
        } catch (URISyntaxException | IOException e) {
            return new LessonFolder(Map.of());
        }
    }

    /** The lessons of a folder, its {@code .md} files; none if there is no such folder. */
    public static LessonFolder in(Path folder) {
        Map<String, Supplier<Lesson>> sources = new TreeMap<>();
        for (String file : LessonReader.lessonsIn(folder)) {
            sources.put(nameOf(file), () -> LessonReader.read(folder.resolve(file)));
        }
        return new LessonFolder(sources);
    }

    private static Map<String, Supplier<Lesson>> inJar(Path jar) throws IOException {
        Map<String, Supplier<Lesson>> sources = new TreeMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            file.stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.matches(FOLDER + "/[^/]+\\" + LessonReader.ENDING))
                    .forEach(
                            name ->
                                    sources.put(
                                            nameOf(name.substring(FOLDER.length() + 1)),
                                            () -> readResource(name)));
        }
        return sources;
    }

    /** The course book, a page in the form of a lesson; empty if it isn't packaged. */
    public static Optional<Lesson> courseBook() {
        return LessonFolder.class.getResource("/" + COURSE_BOOK) == null
                ? Optional.empty()
                : Optional.of(readResource(COURSE_BOOK));
    }

    private static Lesson readResource(String name) {
        try (InputStream in = LessonFolder.class.getResourceAsStream("/" + name)) {
            return LessonReader.read(name, in.readAllBytes());
        } catch (IOException e) {
            throw new IllegalStateException(name + " is on the class path and can't be read", e);
        }
    }

    /** The lessons' file names without their extension, in order. */
    public List<String> names() {
        return List.copyOf(sources.keySet());
    }

    /** Whether a lesson of this folder has exactly this whole text. */
    public synchronized boolean contains(String text) {
        if (texts.isEmpty()) {
            texts = names().stream().map(name -> read(name).text()).collect(Collectors.toSet());
        }
        return texts.contains(text);
    }

    /** Reads a lesson, one of {@link #names}, with its faults; refuses another name. */
    public Lesson read(String name) {
        Supplier<Lesson> source = sources.get(name);
        if (source == null) {
            throw new IllegalArgumentException(noLesson(name));
        }
        return source.get();
    }

    /**
     * Finds a lesson by its name, its number, words of its name, or the path of any lesson file,
     * such as {@code 1}, {@code 05-sugar-against-ice}, {@code sugar} or {@code mine/oats.md};
     * {@code course} is the course book.
     *
     * @throws IllegalArgumentException if there is none; its one-sentence message names the nearest
     */
    public Lesson find(String words) {
        Optional<Path> file = pathOf(words).filter(Files::exists);
        boolean looksLikePath = words.endsWith(LessonReader.ENDING) || words.matches(".*[/\\\\].*");
        if (looksLikePath && file.isPresent()) {
            return LessonReader.read(file.get());
        }
        Optional<String> name = nameFor(words);
        if (name.isPresent()) {
            return read(name.get());
        }
        if (words.equals("course") && file.isEmpty() && courseBook().isPresent()) {
            return courseBook().get();
        }
        if (file.isPresent()) {
            return LessonReader.read(file.get());
        }
        throw new IllegalArgumentException(
                looksLikePath && pathOf(words).isPresent()
                        ? LessonReader.read(pathOf(words).get()).faults().get(0).toString()
                        : noLesson(words));
    }

    private Optional<String> nameFor(String words) {
        String wanted = nameOf(words.strip()).toLowerCase(Locale.ROOT);
        if (sources.containsKey(wanted)) {
            return Optional.of(wanted);
        }
        if (wanted.matches("\\d{1,9}")) {
            int number = Integer.parseInt(wanted);
            return sources.keySet().stream().filter(n -> numberOf(n) == number).findFirst();
        }
        String tidy = wanted.replaceAll("[\\s_-]+", "-");
        List<String> holding =
                tidy.isEmpty()
                        ? List.of()
                        : sources.keySet().stream()
                                .filter(n -> n.toLowerCase(Locale.ROOT).contains(tidy))
                                .toList();
        return holding.size() == 1 ? Optional.of(holding.get(0)) : Optional.empty();
    }

    private String noLesson(String words) {
        if (sources.isEmpty()) {
            return text("folder.empty", words);
        }
        Map<String, String> nameByWord = new LinkedHashMap<>();
        for (String name : sources.keySet()) {
            nameByWord.put(name, name);
            nameByWord.putIfAbsent(name.replaceFirst("^\\d+-", ""), name);
            for (String word : name.split("-", -1)) {
                if (word.length() >= SHORTEST_WORD) {
                    nameByWord.putIfAbsent(word, name);
                }
            }
        }
        return text(
                "folder.unknown",
                words,
                NearestWord.to(words, nameByWord.keySet())
                        .map(word -> text("near", nameByWord.get(word)))
                        .orElseGet(
                                () -> text("folder.lessons", String.join(", ", sources.keySet()))));
    }

    private static int numberOf(String name) {
        String digits = name.replaceFirst("\\D.*", "");
        return digits.isEmpty() || digits.length() > 9 ? -1 : Integer.parseInt(digits);
    }

    private static String nameOf(String file) {
        return file.endsWith(LessonReader.ENDING)
                ? file.substring(0, file.length() - LessonReader.ENDING.length())
                : file;
    }

    private static Optional<Path> pathOf(String words) {
        try {
            return words.isBlank() ? Optional.empty() : Optional.of(Path.of(words));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
