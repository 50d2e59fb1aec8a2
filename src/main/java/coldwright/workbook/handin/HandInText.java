package coldwright.workbook.handin;

import static coldwright.workbook.entry.WorkbookText.refusal;

import coldwright.workbook.entry.EntriesReader;
import coldwright.workbook.entry.KeyedEntry;
import coldwright.workbook.entry.KeyedEntryWriter;
import coldwright.workbook.work.ContentHash;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The text form of a hand-in; {@code docs/workbook.md} describes it. */
final class HandInText extends EntriesReader<HandIn> {
    private static final String HEADING = "Coldwright hand-in 1";

    private final List<DraftStep> steps = new ArrayList<>();

    HandInText() {
        super(HEADING, "learner", "lesson", "title", "hash", "date", "steps done");
    }

    private static final class DraftStep {
        private final String title;
        private final List<HandedInStep.Prediction> predictions = new ArrayList<>();
        private final List<HandedInStep.Snippet> snippets = new ArrayList<>();
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
        for (HandedInStep.Prediction one : step.predictions()) {
            out.entry("forecast " + (one.index() + 1), one.question())
                    .entry("said", one.answer())
                    .entry("right", one.right())
                    .entry("came true", one.outcome().word());
        }
        for (HandedInStep.Snippet one : step.snippets()) {
            out.entry(
                            "snippet " + (one.index() + 1),
                            one.changed() ? "changed" : "as its author wrote it")
                    .block(one.text());
        }
    }

    @Override
    protected Optional<HandIn> made() {
        Optional<String> lesson = needed("lesson", Function.identity());
        ContentHash hash = needed("hash", ContentHash::new).orElse(ContentHash.of(""));
        Optional<Instant> when = needed("date", EntriesReader::time);
        return lesson.map(
                file ->
                        new HandIn(
                                head("learner", Function.identity()).orElse(""),
                                file,
                                head("title", Function.identity()).orElse(""),
                                hash,
                                when,
                                steps.stream().map(DraftStep::step).toList()));
    }

    @Override
    protected void take(KeyedEntry entry) {
        switch (entry.word()) {
            case "step" -> steps.add(new DraftStep(entry.value()));
            case "done" -> step(entry).done = entry.isYes();
            case "forecast" -> {
                int index = Math.max(0, entry.number() - 1);
                step(entry)
                        .predictions
                        .add(
                                new HandedInStep.Prediction(
                                        index, entry.value(), "", "", PredictionOutcome.OPEN));
                entry.index();
            }
            case "said", "right", "came true" -> answer(step(entry).predictions, entry);
            case "snippet" ->
                    step(entry)
                            .snippets
                            .add(
                                    new HandedInStep.Snippet(
                                            entry.index(),
                                            entry.value().equals("changed"),
                                            entry.block().orElse("")));
            default -> throw refusal("hand-in.unknown", entry.key());
        }
    }

    private DraftStep step(KeyedEntry entry) {
        if (steps.isEmpty()) {
            throw refusal("entry.before-step", entry.key());
        }
        return steps.get(steps.size() - 1);
    }

    private static void answer(List<HandedInStep.Prediction> predictions, KeyedEntry entry) {
        if (predictions.isEmpty()) {
            throw refusal("entry.no-question", entry.key());
        }
        int at = predictions.size() - 1;
        HandedInStep.Prediction last = predictions.get(at);
        String word = entry.word();
        predictions.set(
                at,
                new HandedInStep.Prediction(
                        last.index(),
                        last.question(),
                        word.equals("said") ? entry.value() : last.answer(),
                        word.equals("right") ? entry.value() : last.right(),
                        word.equals("came true") ? outcome(entry) : last.outcome()));
    }

    private static PredictionOutcome outcome(KeyedEntry entry) {
        try {
            return PredictionOutcome.valueOf(entry.value().toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw refusal("entry.came-true", entry.value());
        }
    }
}
