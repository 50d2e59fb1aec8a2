package coldwright.terminal.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonReader;
import coldwright.print.Handout;
import coldwright.print.HandoutEdition;
import coldwright.print.HandoutOptions;
import coldwright.print.PaperSize;
import coldwright.terminal.SharedBenches;
import coldwright.terminal.TypedSession;
import coldwright.workbook.DataFolder;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.GivenPrediction;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A question without a run on its way: asked in the terminal, handed in, marked, printed. */
class AnsweredQuestionTest {
    private static final String TEXT =
            """
            # Ice

            ## Before

            ```question
            Which of them are water?
            - * ice
            - fat -- fat sets, but it isn’t water
            - * steam

            Both, once *cold* and once hot.
            ```

            ## Run

            ```java
            double heat = 180;
            ```
            """;

    private static final Lesson LESSON = LessonReader.read("01-ice.md", TEXT);

    @TempDir Path folder;

    private String walked(DataFolder data, String... typed) throws IOException {
        Path file = Files.writeString(folder.resolve("01-ice.md"), TEXT);
        TypedSession session = TypedSession.at(80, typed);
        session.obey(data, "walk", file.toString(), "--trust");
        return session.out();
    }

    @Test
    void theWalkAsksAndAnswersAtOnce() throws IOException {
        DataFolder data = new DataFolder(folder.resolve("data"));
        String right = walked(data, "", "d", "a, c", "q");
        assertTrue(right.contains("Which of them are water?\n  a  ice\n  b  fat\n"), right);
        assertTrue(right.contains("\"d\" is not one or more letters from a to c"), right);
        assertTrue(right.contains("right: ice; steam."), right);
        assertTrue(right.contains("  b  fat sets, but it isn’t water"), right);
        assertTrue(right.contains("Both, once cold and once hot."), right);
        String wrong = walked(new DataFolder(folder.resolve("other")), "", "b", "q");
        assertTrue(wrong.contains("fat. The answer: ice; steam."), wrong);
    }

    private static LessonWork work(String said) {
        return LessonWork.empty(
                        LessonKey.ofCourse("01-ice"), "01-ice.md", "Ice", ContentHash.of(TEXT))
                .withPrediction(
                        "Before",
                        new GivenPrediction(
                                0, "Which of them are water?", new LearnerAnswer.Typed(said)));
    }

    @Test
    void theAnswerIsHandedInAndMarked() throws IOException {
        Path lessons = Files.createDirectory(folder.resolve("lessons"));
        Files.writeString(lessons.resolve("01-ice.md"), TEXT);
        for (String said : List.of("ice; steam", "ice")) {
            HandIn handIn = HandIn.of(work(said), "N" + said.length(), LESSON, Instant.EPOCH);
            assertEquals(Optional.of(handIn), HandIn.read(handIn.text()).value());
            Files.writeString(folder.resolve(handIn.fileName()), handIn.text());
        }
        TypedSession session = TypedSession.nobody();
        new ClassMarking(
                        session.screen(),
                        LessonFolder.in(lessons),
                        SharedBenches.SHARED,
                        Duration.ofSeconds(60),
                        Optional.empty(),
                        false,
                        false)
                .check(List.of(folder.toString()));
        String marks = session.out().replaceAll("\\s+", " ");
        assertTrue(
                marks.contains("“Which of them are water?”: ice; steam; right: ice; steam (right)"),
                marks);
        assertTrue(
                marks.contains("“Which of them are water?”: ice; right: ice; steam (wrong)"),
                marks);
    }

    private static String html(HandoutEdition edition, Optional<HandIn> work) {
        return Handout.html(
                LESSON, Map.of(), new HandoutOptions(edition, PaperSize.A4, false, work));
    }

    @Test
    void onlyTheTeachersPaperShowsTheAnswer() {
        for (HandoutEdition edition : List.of(HandoutEdition.BLANK, HandoutEdition.READER)) {
            String html = html(edition, Optional.empty());
            assertTrue(html.contains("Which of them are water?"), html);
            assertTrue(html.contains(">\u00A0</span> steam"), html);
            assertFalse(html.contains("(right)"), html);
            assertFalse(html.contains("sets, but"), html);
            assertFalse(html.contains("once hot"), html);
        }
        String answers = html(HandoutEdition.ANSWERS, Optional.empty());
        assertTrue(answers.contains("<b>ice</b> <i class=\"right\">(right)</i>"), answers);
        assertTrue(answers.contains("<b>steam</b>"), answers);
        assertTrue(answers.contains("fat – <i>fat sets, but it isn’t water</i>"), answers);
        assertTrue(answers.contains("once hot"), answers);
    }

    @Test
    void aLearnersTicksAreOnTheirPaper() {
        HandIn handIn = HandIn.of(work("fat; steam"), "Ada", LESSON, Instant.EPOCH);
        String html = html(HandoutEdition.READER, Optional.of(handIn));
        assertTrue(html.contains(">\u00A0</span> ice"), html);
        assertTrue(html.contains(">×</span> fat"), html);
        assertTrue(html.contains(">×</span> steam"), html);
    }
}
