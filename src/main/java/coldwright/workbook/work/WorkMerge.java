package coldwright.workbook.work;

import coldwright.workbook.entry.ThreeWay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/** Merges the work of two windows on one lesson, snippet by snippet and answer by answer. */
public final class WorkMerge {
    private final ThreeWay way = new ThreeWay();

    private WorkMerge() {}

    /** Merges work since its common ancestor; where both changed a snippet or answer, mine. */
    public static ThreeWay.Merged<LessonWork> of(
            LessonWork base, LessonWork mine, LessonWork theirs) {
        WorkMerge merge = new WorkMerge();
        LessonWork work = mine;
        Set<String> titles = new LinkedHashSet<>();
        Stream.of(mine, theirs)
                .flatMap(one -> one.steps().stream())
                .forEach(step -> titles.add(step.title()));
        for (String title : titles) {
            work =
                    work.withStep(
                            merge.step(base.step(title), mine.step(title), theirs.step(title)));
        }
        String seen = mine.inSight().equals(base.inSight()) ? theirs.inSight() : mine.inSight();
        return merge.way.merged(work.withInSight(seen));
    }

    private StepWork step(StepWork base, StepWork mine, StepWork theirs) {
        List<SnippetEdit> edits =
                each(
                        base,
                        mine,
                        theirs,
                        step -> step.edits().stream().map(SnippetEdit::index),
                        StepWork::edit);
        List<GivenPrediction> answers =
                each(
                        base,
                        mine,
                        theirs,
                        step -> step.predictions().stream().map(GivenPrediction::index),
                        WorkMerge::answer);
        return new StepWork(
                mine.title(),
                way.choose(base, mine, theirs, StepWork::read),
                way.choose(base, mine, theirs, StepWork::done),
                edits,
                aside(base, mine, theirs),
                answers);
    }

    private static Optional<GivenPrediction> answer(StepWork step, int index) {
        return step.predictions().stream().filter(one -> one.index() == index).findFirst();
    }

    private <T> List<T> each(
            StepWork base,
            StepWork mine,
            StepWork theirs,
            Function<StepWork, Stream<Integer>> indexes,
            BiFunction<StepWork, Integer, Optional<T>> part) {
        Set<Integer> all = new TreeSet<>();
        Stream.of(mine, theirs).flatMap(indexes).forEach(all::add);
        return all.stream()
                .map(index -> way.choose(base, mine, theirs, step -> part.apply(step, index)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Nobody sees the edits kept aside, so where both changed them all are kept. */
    private static List<SnippetEdit> aside(StepWork base, StepWork mine, StepWork theirs) {
        if (mine.aside().equals(base.aside())) {
            return theirs.aside();
        }
        if (theirs.aside().equals(base.aside())) {
            return mine.aside();
        }
        List<SnippetEdit> all = new ArrayList<>(mine.aside());
        theirs.aside().stream().filter(one -> !all.contains(one)).forEach(all::add);
        return all;
    }
}
