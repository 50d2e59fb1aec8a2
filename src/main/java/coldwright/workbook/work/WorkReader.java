package coldwright.workbook.work;

import coldwright.text.TextFault;
import coldwright.workbook.entry.KeyedEntry;
import coldwright.workbook.entry.KeyedEntryReader;
import coldwright.workbook.entry.ParsedEntries;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one file of work; reports each error and continues after it. */
final class WorkReader {
    private static final ContentHash UNKNOWN = ContentHash.of("");

    private final LessonKey key;
    private final Map<String, KeyedEntry> head = new HashMap<>();
    private final List<StepWork> steps = new ArrayList<>();
    private final List<TextFault> faults = new ArrayList<>();
    private StepWork step;
    private KeyedEntry question;

    WorkReader(LessonKey key) {
        this.key = key;
    }

    ParsedEntries<Optional<LessonWork>> read(String text) {
        ParsedEntries<List<KeyedEntry>> entries = KeyedEntryReader.read(text, WorkText.HEADING);
        faults.addAll(entries.faults());
        if (!entries.value().isEmpty() || entries.faults().isEmpty()) {
            for (KeyedEntry entry : entries.value()) {
                try {
                    take(entry);
                } catch (IllegalArgumentException e) {
                    faults.add(new TextFault(entry.line(), e.getMessage()));
                }
            }
            endStep();
        }
        return new ParsedEntries<>(work(entries), faults);
    }

    private Optional<LessonWork> work(ParsedEntries<List<KeyedEntry>> entries) {
        if (entries.value().isEmpty()) {
            if (entries.faults().isEmpty()) {
                faults.add(new TextFault(1, "the file ends after its first line"));
            }
            return Optional.empty();
        }
        if (headOf("hash").isEmpty()) {
            faults.add(
                    new TextFault(
                            1,
                            "the line `hash: ...` with the hash of the lesson's text is missing"));
        }
        return Optional.of(
                new LessonWork(
                        key,
                        headOf("lesson").map(KeyedEntry::value).orElse(key.name() + ".md"),
                        headOf("title").map(KeyedEntry::value).orElse(""),
                        headOf("hash").map(this::hash).orElse(UNKNOWN),
                        headOf("changed").flatMap(this::instant).orElse(Instant.EPOCH),
                        headOf("in sight").map(KeyedEntry::value).orElse(StepNames.OPENING),
                        steps));
    }

    private Optional<KeyedEntry> headOf(String word) {
        return Optional.ofNullable(head.get(word));
    }

    /** An unreadable hash becomes that of an empty text, so that its content is not lost. */
    private ContentHash hash(KeyedEntry entry) {
        try {
            return new ContentHash(entry.value());
        } catch (IllegalArgumentException e) {
            faults.add(new TextFault(entry.line(), e.getMessage()));
            return UNKNOWN;
        }
    }

    private Optional<Instant> instant(KeyedEntry entry) {
        try {
            return Optional.of(Instant.parse(entry.value()));
        } catch (DateTimeParseException e) {
            faults.add(
                    new TextFault(
                            entry.line(),
                            "\"%s\" isn't a time; write one like 2026-11-25T16:40:27Z"
                                    .formatted(KeyedEntryReader.quoted(entry.value()))));
            return Optional.empty();
        }
    }

    private void take(KeyedEntry entry) {
        switch (entry.word()) {
            case "lesson", "title", "hash", "changed", "in sight" -> {
                if (head.putIfAbsent(entry.key(), entry) != null) {
                    throw twice(entry);
                }
            }
            case "step" -> takeStep(entry);
            case "read" -> step = step(entry).withRead(yes(entry));
            case "done" -> step = step(entry).withDone(yes(entry));
            case "forecast" -> question = entry;
            case "choice" -> answer(new LearnerAnswer.Choice(place(entry), entry.value()), entry);
            case "typed" -> answer(new LearnerAnswer.Typed(entry.value()), entry);
            case "curve" -> answer(new LearnerAnswer.Curve(points(entry)), entry);
            case "snippet" -> takeSnippet(entry);
            case "aside" -> takeAside(entry);
            default ->
                    throw new IllegalArgumentException(
                            "\"%s\" isn't a key of a workbook; check its spelling"
                                    .formatted(KeyedEntryReader.quoted(entry.key())));
        }
    }

    private void takeStep(KeyedEntry entry) {
        endStep();
        StepWork former =
                steps.stream()
                        .filter(one -> one.title().equals(entry.value()))
                        .findFirst()
                        .orElse(null);
        if (former == null) {
            step = StepWork.empty(entry.value());
            return;
        }
        steps.remove(former);
        step = former;
        throw new IllegalArgumentException(
                "the step \"%s\" appears twice; put its lines together"
                        .formatted(KeyedEntryReader.quoted(entry.value())));
    }

    private void endStep() {
        if (step != null) {
            steps.add(step);
        }
        question = null;
    }

    private StepWork step(KeyedEntry entry) {
        if (step == null) {
            throw new IllegalArgumentException(
                    "\"%s\" is before the first `step: ...`; move it after one"
                            .formatted(KeyedEntryReader.quoted(entry.key())));
        }
        return step;
    }

    private static boolean yes(KeyedEntry entry) {
        if (!entry.value().equals("yes") && !entry.value().equals("no")) {
            throw new IllegalArgumentException(
                    "%s is \"%s\"; it must be yes or no"
                            .formatted(entry.key(), KeyedEntryReader.quoted(entry.value())));
        }
        return entry.value().equals("yes");
    }

    private static int place(KeyedEntry entry) {
        if (entry.number() < 1) {
            throw new IllegalArgumentException(
                    "\"%s\" has no number; write one from 1, such as `%s 1`"
                            .formatted(KeyedEntryReader.quoted(entry.key()), entry.word()));
        }
        return entry.number() - 1;
    }

    private void answer(LearnerAnswer learnerAnswer, KeyedEntry entry) {
        StepWork here = step(entry);
        if (question == null) {
            throw new IllegalArgumentException(
                    "this answer has no `forecast 1: ...` above it; write the question there");
        }
        KeyedEntry asked = question;
        question = null;
        int index = place(asked);
        if (here.predictions().stream().anyMatch(one -> one.index() == index)) {
            throw twice(asked);
        }
        step = here.withPrediction(new GivenPrediction(index, asked.value(), learnerAnswer));
    }

    /** A text without a known position is kept aside, because somebody wrote it. */
    private void takeSnippet(KeyedEntry entry) {
        StepWork here = step(entry);
        if (entry.number() < 1) {
            takeAside(entry);
            place(entry);
        }
        int index = place(entry);
        if (here.edit(index).isPresent()) {
            takeAside(entry);
            throw twice(entry);
        }
        List<SnippetEdit> edits = new ArrayList<>(here.edits());
        edits.add(new SnippetEdit(index, entry.block().orElse(""), hash(entry)));
        step = here.with(edits, here.aside());
    }

    private void takeAside(KeyedEntry entry) {
        StepWork here = step(entry);
        int index = Math.max(0, entry.number() - 1);
        List<SnippetEdit> aside = new ArrayList<>(here.aside());
        aside.add(new SnippetEdit(index, entry.block().orElse(""), hash(entry)));
        step = here.with(here.edits(), aside);
    }

    private static List<LearnerAnswer.Point> points(KeyedEntry entry) {
        List<LearnerAnswer.Point> points = new ArrayList<>();
        for (String line : entry.block().orElse("").split("\n", -1)) {
            String[] both = line.strip().split("\\s+", -1);
            if (both.length == 2) {
                points.add(new LearnerAnswer.Point(number(both[0]), number(both[1])));
            } else if (!line.isBlank()) {
                throw new IllegalArgumentException(
                        "\"%s\" isn't a point of a curve; write two numbers such as `-5 20.1`"
                                .formatted(KeyedEntryReader.quoted(line.strip())));
            }
        }
        return points;
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text.replace('−', '-'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "\"%s\" isn't a number; write one such as -5.2"
                            .formatted(KeyedEntryReader.quoted(text)),
                    e);
        }
    }

    private static IllegalArgumentException twice(KeyedEntry entry) {
        return new IllegalArgumentException(
                "\"%s\" appears twice; remove one of them"
                        .formatted(KeyedEntryReader.quoted(entry.key())));
    }
}
