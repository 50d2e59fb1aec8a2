package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonShelf;
import coldwright.lesson.Part;
import coldwright.text.TextFault;
import coldwright.text.TextFile;
import coldwright.workbook.entry.Parsed;
import coldwright.workbook.handin.CameTrue;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedForecast;
import coldwright.workbook.handin.HandedSnippet;
import coldwright.workbook.handin.HandedStep;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.StepNames;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** From a handed-in file to what came of it. Believes nothing that the file says of itself. */
final class HandInRead {
    private static final int MOST_BYTES = 16_000_000;
    private static final int MOST_FAULTS = 5;

    /** How many snippets may take all the time there is for one before a hand-in is given up. */
    private static final int MOST_HANGING = 4;

    private final LessonShelf shelf;
    private final Duration patience;
    private final Map<Object, Lesson> lessons = new HashMap<>();

    HandInRead(LessonShelf shelf, Duration patience) {
        this.shelf = shelf;
        this.patience = patience;
    }

    /** Tries a file. */
    Marked mark(Path file, String name, Runs runs) {
        if (Files.isSymbolicLink(file)) {
            return Marked.refused(name, List.of("this is a link; put the file itself there"));
        }
        TextFile read = TextFile.read(file, MOST_BYTES);
        List<String> notes = new ArrayList<>(told(read.faults()));
        if (read.text().isEmpty()) {
            return Marked.refused(name, notes);
        }
        Parsed<Optional<HandIn>> parsed = HandIn.read(read.text().get());
        notes.addAll(told(parsed.faults()));
        if (parsed.value().isEmpty()) {
            return Marked.refused(name, notes);
        }
        HandIn handIn = parsed.value().get();
        Optional<Lesson> found = lessonOf(handIn, file);
        if (found.isEmpty()) {
            notes.add(
                    "there is no lesson %s in the course nor beside the hand-in; put its file there"
                            .formatted(Marked.oneLine(handIn.lessonFile())));
        }
        Lesson lesson = found.orElse(null);
        if (lesson != null) {
            notes.addAll(doubts(handIn, lesson));
            runs.allow(patience.multipliedBy(MOST_HANGING));
        }
        return new Marked(
                name,
                Marked.oneLine(handIn.learner()),
                Marked.oneLine(handIn.lessonName()),
                lesson == null ? "" : lesson.title(),
                handIn.when().toString(),
                lesson == null ? List.of() : HandInCheck.of(handIn, lesson, runs),
                notes,
                lesson != null && read.faults().isEmpty() && parsed.faults().isEmpty());
    }

    private static List<String> told(List<TextFault> faults) {
        List<String> lines = new ArrayList<>();
        faults.stream()
                .limit(MOST_FAULTS)
                .map(one -> (one.line() > 0 ? "line " + one.line() + ": " : "") + one.words())
                .map(Marked::oneLine)
                .forEach(lines::add);
        if (faults.size() > MOST_FAULTS) {
            lines.add("and %d faults more".formatted(faults.size() - MOST_FAULTS));
        }
        return lines;
    }

    /** What the file claims and is not so, and what may not be the learner's doing. */
    private static List<String> doubts(HandIn handIn, Lesson lesson) {
        List<String> notes = new ArrayList<>();
        if (handIn.learner().isBlank()) {
            notes.add("it names no learner");
        }
        if (!ContentHash.of(lesson).equals(Optional.of(handIn.lessonHash()))) {
            notes.add(
                    "%s here has another text than the lesson that was worked on; what differs may not be the learner's doing"
                            .formatted(Marked.oneLine(handIn.lessonFile())));
        }
        Map<String, List<Part>> parts = StepNames.parts(lesson);
        Set<String> seen = new HashSet<>();
        for (HandedStep step : handIn.steps()) {
            String title = Marked.oneLine(step.title());
            if (!seen.add(step.title())) {
                notes.add("the step \"%s\" stands there twice; the first counts".formatted(title));
            } else if (!parts.containsKey(step.title())) {
                notes.add("the lesson has no step \"%s\"; it was left out".formatted(title));
            } else {
                notes.addAll(claims(step, parts.get(step.title())));
            }
            if (notes.size() > MOST_FAULTS) {
                notes.add("and perhaps more");
                return notes;
            }
        }
        return notes;
    }

    private static List<String> claims(HandedStep step, List<Part> parts) {
        List<String> notes = new ArrayList<>();
        List<String> codes = new ArrayList<>();
        for (Part part : parts) {
            if (part instanceof Part.Snippet snippet) {
                codes.add(snippet.code());
            } else if (part instanceof Part.Forecast asked) {
                for (HandedForecast said : step.forecasts()) {
                    if (said.question().equals(asked.question())
                            && said.cameTrue() == CameTrue.YES
                            && CameTrue.of(asked.answer(), said.said()) == CameTrue.NO) {
                        notes.add(
                                "the file says that a forecast in \"%s\" came true; it did not"
                                        .formatted(Marked.oneLine(step.title())));
                    }
                }
            }
        }
        for (HandedSnippet one : step.snippets()) {
            if (!one.changed()
                    && one.index() < codes.size()
                    && !codes.get(one.index()).equals(one.text())) {
                notes.add(
                        "the file says that snippet %d of \"%s\" is its author's; it is not"
                                .formatted(one.index() + 1, Marked.oneLine(step.title())));
            }
        }
        return notes;
    }

    /** The lesson by its name alone: a hand-in may not name a file elsewhere. */
    private synchronized Optional<Lesson> lessonOf(HandIn handIn, Path file) {
        String name = handIn.lessonName();
        if (shelf.names().contains(name)) {
            return Optional.of(lessons.computeIfAbsent(name, one -> shelf.read(name)));
        }
        if (!handIn.lessonFile().matches("[^/\\\\:\\x00-\\x1F]{1,200}\\.md")) {
            return Optional.empty();
        }
        Path beside = file.toAbsolutePath().resolveSibling(handIn.lessonFile());
        Path above = beside.getParent().resolveSibling(handIn.lessonFile());
        for (Path path : List.of(beside, above)) {
            if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of(lessons.computeIfAbsent(path, one -> LessonReader.read(path)));
            }
        }
        return Optional.empty();
    }
}
