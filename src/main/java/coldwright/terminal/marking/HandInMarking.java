package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonReader;
import coldwright.terminal.console.BlockingBench;
import coldwright.text.TextFault;
import coldwright.text.TextFile;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedInStep;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.StepNames;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Marks a handed-in file. Trusts none of the file's own claims. */
public final class HandInMarking {
    private static final int MOST_BYTES = 16_000_000;
    private static final int MOST_FAULTS = 5;

    /** Number of snippets that may reach the time limit before a hand-in is given up. */
    private static final int MOST_HANGING = 4;

    private final LessonFolder courseLessons;
    private final Duration patience;
    private final Map<Object, Lesson> lessons = new HashMap<>();

    public HandInMarking(LessonFolder shelf, Duration patience) {
        this.courseLessons = shelf;
        this.patience = patience;
    }

    public MarkedHandIn mark(Path file, String name, BlockingBench blockingBench) {
        if (Files.isSymbolicLink(file)) {
            return MarkedHandIn.refused(name, List.of(text("hand-in.link")));
        }
        TextFile read = TextFile.read(file, MOST_BYTES);
        List<String> notes = new ArrayList<>(messages(read.faults()));
        if (read.text().isEmpty()) {
            return MarkedHandIn.refused(name, notes);
        }
        ParsedEntries<Optional<HandIn>> parsed = HandIn.read(read.text().get());
        notes.addAll(messages(parsed.faults()));
        if (parsed.value().isEmpty()) {
            return MarkedHandIn.refused(name, notes);
        }
        HandIn handIn = parsed.value().get();
        Optional<Lesson> found = lessonOf(handIn, file);
        if (found.isEmpty()) {
            notes.add(text("hand-in.no-lesson", MarkedHandIn.oneLine(handIn.lessonFile())));
        }
        found.ifPresent(lesson -> notes.addAll(doubts(handIn, lesson)));
        blockingBench.allow(patience.multipliedBy(MOST_HANGING));
        List<MarkedStep> steps =
                found.map(lesson -> HandInCheck.of(handIn, lesson, blockingBench))
                        .orElse(List.of());
        boolean busy = blockingBench.wasBusy();
        if (busy) {
            notes.add(0, text("hand-in.busy"));
        }
        return new MarkedHandIn(
                name,
                MarkedHandIn.oneLine(handIn.learner()),
                MarkedHandIn.oneLine(handIn.lessonName()),
                found.map(Lesson::title).orElse(""),
                handIn.when().map(Instant::toString).orElse(""),
                busy ? List.of() : steps,
                notes,
                found.isPresent() && read.faults().isEmpty() && parsed.faults().isEmpty(),
                busy);
    }

    private static List<String> messages(List<TextFault> faults) {
        List<String> lines = new ArrayList<>();
        for (TextFault one : faults.subList(0, Math.min(MOST_FAULTS, faults.size()))) {
            lines.add(
                    MarkedHandIn.oneLine(
                            one.line() > 0
                                    ? text("hand-in.line", one.line(), one.words())
                                    : one.words()));
        }
        if (faults.size() > MOST_FAULTS) {
            lines.add(text("hand-in.more-faults", faults.size() - MOST_FAULTS));
        }
        return lines;
    }

    /** False claims in the file, and differences that may not be the learner's doing. */
    private static List<String> doubts(HandIn handIn, Lesson lesson) {
        List<String> notes = new ArrayList<>();
        if (handIn.learner().isBlank()) {
            notes.add(text("hand-in.no-learner"));
        }
        if (!ContentHash.of(lesson.text()).equals(handIn.lessonHash())) {
            notes.add(text("hand-in.other-text", MarkedHandIn.oneLine(handIn.lessonFile())));
        }
        lesson.faults().stream()
                .findFirst()
                .ifPresent(
                        fault ->
                                notes.add(
                                        MarkedHandIn.oneLine(
                                                text("hand-in.lesson-fault", fault.toString()))));
        Map<String, List<LessonPart>> parts = StepNames.parts(lesson);
        Set<String> seen = new HashSet<>();
        for (HandedInStep step : handIn.steps()) {
            String title = MarkedHandIn.oneLine(step.title());
            if (!seen.add(step.title())) {
                notes.add(text("hand-in.step-twice", title));
            } else if (!parts.containsKey(step.title())) {
                notes.add(text("hand-in.no-step", title));
            } else {
                notes.addAll(claims(step, parts.get(step.title())));
            }
            if (notes.size() > MOST_FAULTS) {
                notes.add(text("hand-in.perhaps-more"));
                return notes;
            }
        }
        return notes;
    }

    private static List<String> claims(HandedInStep step, List<LessonPart> parts) {
        List<String> notes = new ArrayList<>();
        for (LessonPart.Asked asked : LessonPart.only(LessonPart.Asked.class, parts)) {
            for (HandedInStep.Prediction said : step.predictions()) {
                if (said.question().equals(asked.question())
                        && said.outcome() == PredictionOutcome.YES
                        && PredictionOutcome.of(asked.answer(), said.answer())
                                == PredictionOutcome.NO) {
                    notes.add(text("hand-in.prediction-wrong", MarkedHandIn.oneLine(step.title())));
                }
            }
        }
        List<LessonPart.Snippet> snippets = LessonPart.only(LessonPart.Snippet.class, parts);
        for (HandedInStep.Snippet one : step.snippets()) {
            if (!one.changed()
                    && one.index() < snippets.size()
                    && !snippets.get(one.index()).code().equals(one.text())) {
                notes.add(
                        text(
                                "hand-in.not-authors",
                                one.index() + 1,
                                MarkedHandIn.oneLine(step.title())));
            }
        }
        return notes;
    }

    /** Finds the lesson by name alone: a hand-in must not name a file elsewhere. */
    private synchronized Optional<Lesson> lessonOf(HandIn handIn, Path file) {
        String name = handIn.lessonName();
        if (courseLessons.names().contains(name)) {
            return Optional.of(lessons.computeIfAbsent(name, one -> courseLessons.read(name)));
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
