package coldwright.workbook.work;

import static coldwright.workbook.entry.WorkbookText.refusal;

import coldwright.workbook.entry.EntriesReader;
import coldwright.workbook.entry.KeyedEntry;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one file of work. */
final class WorkReader extends EntriesReader<LessonWork> {
    private static final ContentHash UNKNOWN = ContentHash.of("");
    private static final Pattern POINT =
            Pattern.compile(
                    "(%1$s)\\s+(%1$s)"
                            .formatted("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?"));

    private final LessonKey key;
    private final List<StepWork> steps = new ArrayList<>();
    private StepWork step;
    private KeyedEntry question;

    WorkReader(LessonKey key) {
        super(WorkText.HEADING, "lesson", "title", "hash", "changed", "in sight");
        this.key = key;
    }

    /** An unreadable hash becomes that of an empty text, so that its content is not lost. */
    @Override
    protected Optional<LessonWork> made() {
        endStep();
        return Optional.of(
                new LessonWork(
                        key,
                        head("lesson", Function.identity()).orElse(key.name() + ".md"),
                        head("title", Function.identity()).orElse(""),
                        needed("hash", ContentHash::new).orElse(UNKNOWN),
                        head("changed", EntriesReader::time).orElse(Instant.EPOCH),
                        head("in sight", Function.identity()).orElse(StepNames.OPENING),
                        steps));
    }

    @Override
    protected void take(KeyedEntry entry) {
        switch (entry.word()) {
            case "step" -> takeStep(entry);
            case "read" -> step = step(entry).withRead(entry.isYes());
            case "done" -> step = step(entry).withDone(entry.isYes());
            case "forecast" -> question = entry;
            case "choice" -> answer(new LearnerAnswer.Choice(entry.index(), entry.value()), entry);
            case "typed" -> answer(new LearnerAnswer.Typed(entry.value()), entry);
            case "curve" -> answer(new LearnerAnswer.Curve(points(entry)), entry);
            case "snippet" -> takeSnippet(entry);
            case "aside" -> takeAside(entry);
            default -> throw refusal("work.unknown", entry.key());
        }
    }

    private void takeStep(KeyedEntry entry) {
        endStep();
        step = StepWork.empty(entry.value());
        for (StepWork former : List.copyOf(steps)) {
            if (former.title().equals(entry.value())) {
                steps.remove(former);
                step = former;
                throw refusal("step.twice", entry.value());
            }
        }
    }

    private void endStep() {
        if (step != null) {
            steps.add(step);
        }
        question = null;
    }

    private StepWork step(KeyedEntry entry) {
        if (step == null) {
            throw refusal("entry.before-step", entry.key());
        }
        return step;
    }

    private void answer(LearnerAnswer learnerAnswer, KeyedEntry entry) {
        StepWork here = step(entry);
        if (question == null) {
            throw refusal("entry.no-question", entry.key());
        }
        KeyedEntry asked = question;
        question = null;
        int index = asked.index();
        if (here.predictions().stream().anyMatch(one -> one.index() == index)) {
            throw refusal("entry.twice", asked.key());
        }
        step = here.withPrediction(new GivenPrediction(index, asked.value(), learnerAnswer));
    }

    /** A text without a known position is kept aside, because somebody wrote it. */
    private void takeSnippet(KeyedEntry entry) {
        StepWork here = step(entry);
        if (entry.number() < 1 || here.edit(entry.index()).isPresent()) {
            takeAside(entry);
            entry.index();
            throw refusal("entry.twice", entry.key());
        }
        List<SnippetEdit> edits = new ArrayList<>(here.edits());
        edits.add(edit(entry, entry.index()));
        step = here.with(edits, here.aside());
    }

    private void takeAside(KeyedEntry entry) {
        StepWork here = step(entry);
        List<SnippetEdit> aside = new ArrayList<>(here.aside());
        aside.add(edit(entry, Math.max(0, entry.number() - 1)));
        step = here.with(here.edits(), aside);
    }

    private SnippetEdit edit(KeyedEntry entry, int index) {
        ContentHash from = parsed(entry, ContentHash::new).orElse(UNKNOWN);
        return new SnippetEdit(index, entry.block().orElse(""), from);
    }

    private static List<LearnerAnswer.Point> points(KeyedEntry entry) {
        List<LearnerAnswer.Point> points = new ArrayList<>();
        for (String line : entry.block().orElse("").split("\n", -1)) {
            Matcher point = POINT.matcher(line.strip().replace('−', '-'));
            if (point.matches()) {
                points.add(
                        new LearnerAnswer.Point(
                                Double.parseDouble(point.group(1)),
                                Double.parseDouble(point.group(2))));
            } else if (!line.isBlank()) {
                throw refusal("point.unfit", line.strip());
            }
        }
        return points;
    }
}
