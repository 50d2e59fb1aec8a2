package coldwright.workbook.handin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.text.TextFault;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.GivenPrediction;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.SnippetEdit;
import coldwright.workbook.work.Works;

import org.junit.jupiter.api.Test;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is handed in reads back as it was, whatever the learner typed. */
class HandInLawsTest {
    private static final String TEXT =
            """
            # Toasted oats

            ```java given
            double oats = 40;
            ```

            ## Toast

            ```forecast
            How hot?
            - cold
            - * hot
            ```

            ```java
            double heat = 180;
            ```

            ```forecast
            How long?
            number: 12 min within 1
            ```

            ```java
            double time = 12;
            ```

            ## Eat

            Words.
            """;
    private static final Lesson LESSON = LessonReader.read("01-oats.md", TEXT);
    private static final Instant WHEN = Instant.parse("2026-11-25T16:40:27Z");
    private static final LessonWork EMPTY =
            LessonWork.empty(
                    LessonKey.ofCourse("01-oats"),
                    "01-oats.md",
                    "Toasted oats",
                    ContentHash.of(TEXT));

    private static final ContentHash HEAT = ContentHash.of("double heat = 180;");

    @Cases(300)
    void whatIsHandedInReadsBack(Draw draw) {
        String learner = draw.one(Works::texts);
        String code = draw.one(Works::texts);
        String typed = draw.one(Works::texts);
        LessonWork work =
                EMPTY.withSnippet("Toast", new SnippetEdit(0, code, HEAT))
                        .withPrediction(
                                "Toast",
                                new GivenPrediction(1, "How long?", new LearnerAnswer.Typed(typed)))
                        .withDone("Toast", true);
        HandIn handIn = HandIn.of(work, learner, LESSON, WHEN);
        ParsedEntries<Optional<HandIn>> read = HandIn.read(handIn.text());
        assertEquals(new ParsedEntries<>(Optional.of(handIn), List.of()), read);
        assertEquals(Optional.of(code), handIn.step("Toast").orElseThrow().text(0));
        assertTrue(
                handIn.fileName().matches("[\\p{L}\\p{M}\\p{N}_-]+-01-oats\\.handin\\.txt"),
                handIn::fileName);
    }

    @Cases(300)
    void anyTextIsReadWithoutHarm(Draw draw) {
        String text = draw.one(Works::texts);
        String whole = HandIn.of(EMPTY.withDone("Toast", true), "Ada", LESSON, WHEN).text();
        List<String> lines = new ArrayList<>(List.of(whole.split("\n")));
        lines.add(draw.intIn(1, lines.size()), text);
        String file = String.join("\n", lines);
        ParsedEntries<Optional<HandIn>> read = HandIn.read(file);
        for (TextFault fault : read.faults()) {
            assertTrue(fault.line() >= 1 && fault.line() <= file.split("\n", -1).length);
            assertFalse(fault.words().isBlank());
        }
        assertTrue(read.value().isPresent() || !read.faults().isEmpty());
        read.value()
                .ifPresent(
                        handIn ->
                                assertEquals(
                                        Optional.of(handIn), HandIn.read(handIn.text()).value()));
    }

    @Test
    void aTeacherCanReadIt() {
        LessonWork work =
                EMPTY.withSnippet("Toast", new SnippetEdit(0, "double heat = 140;", HEAT))
                        .withPrediction(
                                "Toast",
                                new GivenPrediction(
                                        0, "How hot?", new LearnerAnswer.Choice(0, "cold")))
                        .withPrediction(
                                "Toast",
                                new GivenPrediction(
                                        1, "How long?", new LearnerAnswer.Typed("11,5 min")))
                        .withDone("Toast", true)
                        .withDone("Eat", true);
        String expected =
                """
                Coldwright hand-in 1
                learner: Ada Brunt
                lesson: 01-oats.md
                title: Toasted oats
                hash: HASH
                date: 2026-11-25T16:40:27Z
                steps done: 2
                    Toast
                    Eat

                step:
                done: no
                snippet 1: as its author wrote it
                    double oats = 40;

                step: Toast
                done: yes
                forecast 1: How hot?
                said: cold
                right: hot
                came true: no
                forecast 2: How long?
                said: 11,5 min
                right: 12 min within 1
                came true: yes
                snippet 1: changed
                    double heat = 140;
                snippet 2: as its author wrote it
                    double time = 12;

                step: Eat
                done: yes
                """;
        HandIn handIn = HandIn.of(work, "Ada Brunt", LESSON, WHEN);
        assertEquals(expected.replace("HASH", ContentHash.of(TEXT).hex()), handIn.text());
        assertEquals("Ada-Brunt-01-oats.handin.txt", handIn.fileName());
    }
}
