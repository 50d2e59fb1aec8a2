package coldwright.workbook.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.workbook.entry.ParsedEntries;

import java.util.List;
import java.util.Optional;

/** Work comes back as it was, and a damaged file never takes more with it than what was damaged. */
class WorkLawsTest {
    private static final LessonKey KEY = new LessonKey("01-oats");

    private static LessonWork works(Draw draw) {
        return Works.under(KEY, draw);
    }

    @Cases(300)
    void whatIsWrittenReadsBack(Draw draw) {
        LessonWork work = draw.one(WorkLawsTest::works);
        ParsedEntries<Optional<LessonWork>> read = WorkText.read(KEY, WorkText.write(work));
        assertEquals(List.of(), read.faults());
        assertEquals(Optional.of(work), read.value());
    }

    @Cases(300)
    void aLineTakenOutIsToldOrHarmless(Draw draw) {
        LessonWork work = draw.one(WorkLawsTest::works);
        int which = draw.intIn(Integer.MIN_VALUE, Integer.MAX_VALUE);
        List<String> lines = new java.util.ArrayList<>(WorkText.write(work).lines().toList());
        lines.remove(Math.floorMod(which, lines.size()));
        ParsedEntries<Optional<LessonWork>> read = WorkText.read(KEY, String.join("\n", lines));
        read.faults()
                .forEach(
                        fault ->
                                assertTrue(
                                        fault.line() >= 1 && fault.line() <= lines.size() + 1,
                                        fault::toString));
        assertTrue(read.value().isPresent() || !read.faults().isEmpty());
        read.value()
                .ifPresent(
                        mended ->
                                assertEquals(
                                        Optional.of(mended),
                                        WorkText.read(KEY, WorkText.write(mended)).value()));
    }

    @Cases(300)
    void anEmptyStepIsNotKept(Draw draw) {
        LessonWork work = draw.one(WorkLawsTest::works);
        for (StepWork step : work.steps()) {
            LessonWork without = work.withStep(StepWork.empty(step.title()));
            assertEquals(StepWork.empty(step.title()), without.step(step.title()));
            assertEquals(work.steps().size() - 1, without.steps().size());
        }
        assertTrue(work.emptied().steps().isEmpty());
    }
}
