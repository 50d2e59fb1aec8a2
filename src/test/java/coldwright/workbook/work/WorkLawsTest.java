package coldwright.workbook.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.entry.Parsed;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import java.util.List;
import java.util.Optional;

/** Work comes back as it was, and a damaged file never takes more with it than what was damaged. */
class WorkLawsTest {
    private static final LessonKey KEY = new LessonKey("01-oats");

    @Provide
    Arbitrary<LessonWork> works() {
        return Works.under(KEY);
    }

    @Property(tries = 300)
    void whatIsWrittenReadsBack(@ForAll("works") LessonWork work) {
        Parsed<Optional<LessonWork>> read = WorkText.read(KEY, WorkText.write(work));
        assertEquals(List.of(), read.faults());
        assertEquals(Optional.of(work), read.value());
    }

    @Property(tries = 300)
    void aLineTakenOutIsToldOrHarmless(@ForAll("works") LessonWork work, @ForAll int which) {
        List<String> lines = new java.util.ArrayList<>(WorkText.write(work).lines().toList());
        lines.remove(Math.floorMod(which, lines.size()));
        Parsed<Optional<LessonWork>> read = WorkText.read(KEY, String.join("\n", lines));
        read.faults().forEach(fault -> assertTrue(fault.line() >= 1, fault::toString));
        read.value()
                .ifPresent(
                        mended ->
                                assertEquals(
                                        Optional.of(mended),
                                        WorkText.read(KEY, WorkText.write(mended)).value()));
    }

    @Property(tries = 300)
    void withoutUndoesWith(@ForAll("works") LessonWork work, @ForAll("works") LessonWork other) {
        for (StepWork step : other.steps()) {
            assertEquals(
                    StepWork.empty(step.title()),
                    work.withStep(step).withoutStep(step.title()).step(step.title()));
        }
        assertTrue(work.emptied().steps().isEmpty());
    }
}
