package coldwright.workbook.handin;

import coldwright.text.TextFault;
import coldwright.workbook.entry.KeyedEntry;
import coldwright.workbook.entry.KeyedEntryReader;
import coldwright.workbook.entry.KeyedEntryWriter;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.work.ContentHash;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The text form of a hand-in; {@code docs/workbook.md} describes it. */
final class HandInText {
    private static final String HEADING = "Coldwright hand-in 1";

    private final Map<String, KeyedEntry> head = new HashMap<>();
    private final List<DraftStep> steps = new ArrayList<>();
    private final List<TextFault> faults = new ArrayList<>();

    private static final class DraftStep {
        private final String title;
        private final List<HandedInPrediction> predictions = new ArrayList<>();
        private final List<HandedInSnippet> snippets = new ArrayList<>();
        private boolean done;

        DraftStep(String title) {
            this.title = title;
        }

        HandedInStep step() {
            return new HandedInStep(title, done, predictions, snippets);
        }
    }

    static String write(HandIn handIn) {
        KeyedEntryWriter out = new KeyedEntryWriter(HEADING);
        List<HandedInStep> done = handIn.steps().stream().filter(HandedInStep::done).toList();
        out.entry("learner", handIn.learner())
                .entry("lesson", handIn.lessonFile())
                .entry("title", handIn.title())
                .entry("hash", handIn.lessonHash().hex())
                .entry("date", handIn.when().map(Instant::toString).orElse(""))
                .entry("steps done", String.valueOf(done.size()));
        if (!done.isEmpty()) {
            out.block(String.join("\n", done.stream().map(HandedInStep::title).toList()));
        }
        handIn.steps().forEach(step -> write(step, out));
        return out.text();
    }

    private static void write(HandedInStep step, KeyedEntryWriter out) {
        out.gap().entry("step", step.title()).entry("done", step.done() ? "yes" : "no");
        for (HandedInPrediction one : step.predictions()) {
            out.entry("forecast " + (one.index() + 1), one.question())
                    .entry("said", one.answer())
                    .entry("right", one.right())
                    .entry("came true", one.outcome().word());
        }
        for (HandedInSnippet one : step.snippets()) {
            out.entry(
                            "snippet " + (one.index() + 1),
                            one.changed() ? "changed" : "as its author wrote it")
                    .block(one.text());
        }
    }

    ParsedEntries<Optional<HandIn>> read(String text) {
        ParsedEntries<List<KeyedEntry>> entries = KeyedEntryReader.read(text, HEADING);
        faults.addAll(entries.faults());
        for (KeyedEntry entry : entries.value()) {
            take(entry);
        }
        return new ParsedEntries<>(handIn(entries), faults);
    }

    private Optional<HandIn> handIn(ParsedEntries<List<KeyedEntry>> entries) {
        if (entries.value().isEmpty()) {
            if (entries.faults().isEmpty()) {
                faults.add(new TextFault(1, "the file ends after its first line"));
            }
            return Optional.empty();
        }
        if (!head.containsKey("lesson")) {
            faults.add(new TextFault(1, "there is no line `lesson: ...` that names the lesson"));
            return Optional.empty();
        }
        return Optional.of(
                new HandIn(
                        headOf("learner"),
                        headOf("lesson"),
                        headOf("title"),
                        hash(),
                        when(),
                        steps.stream().map(DraftStep::step).toList()));
    }

    private String headOf(String word) {
        return head.containsKey(word) ? head.get(word).value() : "";
    }

    private ContentHash hash() {
        try {
            return new ContentHash(headOf("hash"));
        } catch (IllegalArgumentException e) {
            fault(head.get("hash"), e.getMessage());
            return ContentHash.of("");
        }
    }

    private Optional<Instant> when() {
        try {
            return Optional.of(Instant.parse(headOf("date")));
        } catch (DateTimeParseException e) {
            fault(
                    head.get("date"),
                    "\"%s\" isn't a date; write one like 2026-11-25T16:40:27Z"
                            .formatted(KeyedEntryReader.quoted(headOf("date"))));
            return Optional.empty();
        }
    }

    private void fault(KeyedEntry entry, String words) {
        faults.add(new TextFault(entry == null ? 1 : entry.line(), words));
    }

    private void take(KeyedEntry entry) {
        switch (entry.word()) {
            case "learner", "lesson", "title", "hash", "date", "steps done" ->
                    head.putIfAbsent(entry.word(), entry);
            case "step" -> steps.add(new DraftStep(entry.value()));
            case "done", "forecast", "said", "right", "came true", "snippet" -> takeInStep(entry);
            default ->
                    fault(
                            entry,
                            "\"%s\" isn't a line of a hand-in; check its spelling"
                                    .formatted(KeyedEntryReader.quoted(entry.key())));
        }
    }

    private void takeInStep(KeyedEntry entry) {
        if (steps.isEmpty()) {
            fault(
                    entry,
                    "\"%s\" is before the first `step: ...`; move it after one"
                            .formatted(KeyedEntryReader.quoted(entry.key())));
            return;
        }
        DraftStep step = steps.get(steps.size() - 1);
        switch (entry.word()) {
            case "done" -> step.done = entry.value().equals("yes");
            case "forecast" ->
                    step.predictions.add(
                            new HandedInPrediction(
                                    place(entry), entry.value(), "", "", PredictionOutcome.OPEN));
            case "said", "right", "came true" -> answer(step.predictions, entry);
            case "snippet" ->
                    step.snippets.add(
                            new HandedInSnippet(
                                    place(entry),
                                    entry.value().equals("changed"),
                                    entry.block().orElse("")));
            default -> throw new AssertionError(entry.word());
        }
    }

    private int place(KeyedEntry entry) {
        if (entry.number() < 1) {
            fault(
                    entry,
                    "\"%s\" has no number; write one from 1, such as `%s 1`"
                            .formatted(KeyedEntryReader.quoted(entry.key()), entry.word()));
        }
        return Math.max(0, entry.number() - 1);
    }

    private void answer(List<HandedInPrediction> forecasts, KeyedEntry entry) {
        if (forecasts.isEmpty()) {
            fault(
                    entry,
                    "\"%s\" has no `forecast 1: ...` above it; write the question there"
                            .formatted(entry.key()));
            return;
        }
        HandedInPrediction last = forecasts.remove(forecasts.size() - 1);
        String word = entry.word();
        forecasts.add(
                new HandedInPrediction(
                        last.index(),
                        last.question(),
                        word.equals("said") ? entry.value() : last.answer(),
                        word.equals("right") ? entry.value() : last.right(),
                        word.equals("came true") ? outcome(entry) : last.outcome()));
    }

    private PredictionOutcome outcome(KeyedEntry entry) {
        try {
            return PredictionOutcome.valueOf(entry.value().toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            fault(
                    entry,
                    "came true is \"%s\"; it must be yes, no or open"
                            .formatted(KeyedEntryReader.quoted(entry.value())));
            return PredictionOutcome.OPEN;
        }
    }
}
