package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Paragraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

class LessonReaderTest {
    private static final String WHOLE =
            """
            # Toasted *oats*

            <!--
            track: Grain
            minutes: 20
            needs: a pan; and time: lots
            -->

            Oats first.

            ## Toast them

            Two
            lines.

            > Hot pan.

            ```forecast
            How brown?
            - pale
            - * brown
              all over

            Brown is right.

            Since *heat*.
            ```

            ```java given
            int before = 1;
            ```

            ```java
            double heat = 180; // dial 100 to 220 step 10 °C
            int oats = 3;
            ```

            ```
            as it stands
            ```

            ```check
            // a remark
            oats is 3 within 0 -- counted

            heat > 100 is true
            ```

            ## Eat them

            Now.
            """;

    private final Lesson lesson = LessonReader.read("oats.md", WHOLE);

    @Test
    void readsTheHead() {
        assertEquals(List.of(), lesson.faults());
        assertEquals("oats.md", lesson.file());
        assertEquals("Toasted oats", lesson.title());
        assertEquals("Grain", lesson.track());
        assertEquals("20", lesson.minutes());
        assertEquals("a pan; and time: lots", lesson.needs());
        assertEquals(1, lesson.opening().size());
        assertEquals(9, lesson.opening().get(0).line());
    }

    @Test
    void readsEveryPartWithItsLine() {
        assertEquals(
                List.of("Toast them", "Eat them"),
                lesson.steps().stream().map(LessonStep::title).toList());
        assertEquals(List.of(11, 49), lesson.steps().stream().map(LessonStep::line).toList());
        List<LessonPart> parts = lesson.steps().get(0).parts();
        assertEquals(
                List.of("Prose", "Prediction", "Snippet", "Snippet", "Prose", "Check"),
                parts.stream().map(part -> part.getClass().getSimpleName()).toList());
        assertEquals(
                List.of(13, 18, 29, 33, 38, 42), parts.stream().map(LessonPart::line).toList());
    }

    @Test
    void readsProseAsParsedBlocks() {
        LessonPart.Prose first = (LessonPart.Prose) lesson.steps().get(0).parts().get(0);
        assertInstanceOf(Paragraph.class, first.nodes().get(0));
        assertInstanceOf(BlockQuote.class, first.nodes().get(1));
        LessonPart.Prose plain = (LessonPart.Prose) lesson.steps().get(0).parts().get(4);
        assertInstanceOf(FencedCodeBlock.class, plain.nodes().get(0));
    }

    @Test
    void readsAForecastOfChoices() {
        LessonPart.Prediction prediction =
                (LessonPart.Prediction) lesson.steps().get(0).parts().get(1);
        assertEquals("How brown?", prediction.question());
        assertEquals(
                new ExpectedAnswer.Choice(List.of("pale", "brown all over"), 1),
                prediction.answer());
        assertEquals(2, prediction.explanation().size());
    }

    @Test
    void readsSnippetsAndTheirDials() {
        List<LessonPart> parts = lesson.steps().get(0).parts();
        assertEquals(new LessonPart.Snippet(29, "int before = 1;", true, List.of()), parts.get(2));
        LessonPart.Snippet snippet = (LessonPart.Snippet) parts.get(3);
        assertEquals(
                "double heat = 180; // dial 100 to 220 step 10 °C\nint oats = 3;", snippet.code());
        assertEquals(List.of(new Dial("heat", 14, 17, 180, 100, 220, 10, "°C")), snippet.dials());
    }

    @Test
    void readsChecks() {
        LessonPart.Check check = (LessonPart.Check) lesson.steps().get(0).parts().get(5);
        assertEquals(
                List.of(
                        new CheckExpectation.Value(44, "oats", 3, 0, "counted"),
                        new CheckExpectation.True(46, "heat > 100", "")),
                check.expectations());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r"})
    void lineEndingsOfOtherSystemsChangeNothing(String ending) {
        Lesson same = LessonReader.read("oats.md", WHOLE.replace("\n", ending));
        assertEquals(lesson.faults(), same.faults());
        assertEquals(lines(lesson), lines(same));
        assertEquals(lesson.steps().get(0).parts().get(3), same.steps().get(0).parts().get(3));
    }

    private static List<Integer> lines(Lesson lesson) {
        return lesson.steps().stream()
                .flatMap(s -> s.parts().stream())
                .map(LessonPart::line)
                .toList();
    }

    @Test
    void underlinedHeadingsAndTildeFencesCount() {
        Lesson other =
                LessonReader.read(
                        "a.md", "Oats\n====\n\nToast\n-----\n\n~~~ JAVA\nint a = 1;\n~~~\n");
        assertEquals(List.of(), other.faults());
        assertEquals("Oats", other.title());
        assertEquals("Toast", other.steps().get(0).title());
        assertEquals(
                new LessonPart.Snippet(7, "int a = 1;", false, List.of()),
                other.steps().get(0).parts().get(0));
    }

    @Test
    void aForecastMayAskForANumber() {
        assertEquals(
                new ExpectedAnswer.Amount(-1.5, "°C", 0.5), numberIn("number: −1.5 °C within 0.5"));
        assertEquals(new ExpectedAnswer.Amount(12, "", 1), numberIn("number: 12 within 1"));
        assertEquals(
                new ExpectedAnswer.Amount(40, "g in 100 g of water", 5),
                numberIn("number: 40 g in 100 g of water within 5"));
        assertEquals(new ExpectedAnswer.Amount(70, "%", 5), numberIn("number:70% within 5 %"));
    }

    @Test
    void aForecastMayAskForACurve() {
        assertEquals(
                new ExpectedAnswer.Curve(
                        new ExpectedAnswer.Scale("sucrose", 0, 40, "%"),
                        new ExpectedAnswer.Scale("freezing point", -12, 0, "°C")),
                numberIn("curve: sucrose 0 to 40 %; freezing point −12 to 0 °C"));
        assertEquals(
                new ExpectedAnswer.Curve(
                        new ExpectedAnswer.Scale("cup 3", 0.5, 2, ""),
                        new ExpectedAnswer.Scale("what is left to melt", 0, 100, "% of 5 g")),
                numberIn("curve:cup 3 0.5 to 2;what is left to melt 0 to 100 % of 5 g"));
    }

    @Test
    void notesForTheTeacherStandAnywhere() {
        Lesson noted =
                LessonReader.read(
                        "a.md",
                        "# t\n```teacher\nBring *oats*.\n```\n## s\nWords.\n```Teacher\nAsk.\n\n- Wait.\n```\n");
        assertEquals(List.of(), noted.faults());
        LessonPart.Teacher first = (LessonPart.Teacher) noted.opening().get(0);
        assertEquals(2, first.line());
        assertInstanceOf(Paragraph.class, first.nodes().get(0));
        LessonPart.Teacher second = (LessonPart.Teacher) noted.steps().get(0).parts().get(1);
        assertEquals(2, second.nodes().size());
    }

    private static ExpectedAnswer numberIn(String line) {
        Lesson asked =
                LessonReader.read(
                        "a.md",
                        "# t\n## s\n```forecast\nHow much?\n\n%s\n\nSo.\n```\n```java\nint a;\n```\n"
                                .formatted(line));
        assertEquals(List.of(), asked.faults());
        return ((LessonPart.Prediction) asked.steps().get(0).parts().get(0)).answer();
    }

    @Test
    void aCommentOfTheAuthorsIsNotShown() {
        Lesson other =
                LessonReader.read(
                        "a.md",
                        "# t\n\n## s\n\nSeen.<!-- unseen -->\n\n<!-- unseen:\n## no step\n-->\n");
        assertEquals(List.of(), other.faults());
        assertEquals(1, other.steps().size());
        LessonPart.Prose prose = (LessonPart.Prose) other.steps().get(0).parts().get(0);
        assertEquals(1, prose.nodes().size());
    }

    @Test
    void aMendedBlockDoesNotShiftTheLinesBelow() {
        Lesson other =
                LessonReader.read(
                        "a.md", "# t\n## s\n```java\nint a = 1;\n## u\n```java\nint b = 2;\n```\n");
        assertEquals(1, other.faults().size());
        assertEquals(List.of(2, 5), other.steps().stream().map(LessonStep::line).toList());
        assertEquals(
                new LessonPart.Snippet(6, "int b = 2;", false, List.of()),
                other.steps().get(1).parts().get(0));
    }

    @Test
    void aLongerFenceMayHoldAShorterOne() {
        Lesson other =
                LessonReader.read(
                        "a.md", "# t\n## s\n````\n```java\n## no step\n```\n````\n## u\nEnd.\n");
        assertEquals(List.of(), other.faults());
        assertEquals(2, other.steps().size());
    }

    @Test
    void whatAFaultQuotesIsShownHarmlessly() {
        Lesson odd =
                LessonReader.read(
                        "a.md", "# t\n## s\n```\u001b[31mred" + "x".repeat(5000) + "\n```\n");
        String words = odd.faults().get(0).words();
        assertTrue(words.length() < 500, words);
        assertEquals(-1, words.indexOf('\u001b'));
    }

    @Test
    void aHundredFaultsAreEnough() {
        Lesson odd = LessonReader.read("a.md", "# t\n" + "## s\n".repeat(300));
        assertEquals(101, odd.faults().size());
        assertEquals(
                "a.md: 199 more errors are not listed; fix these first",
                odd.faults().get(100).toString());
    }

    @Test
    void aSolutionBelongsToTheSnippetAboveIt() {
        Lesson exercise =
                LessonReader.read(
                        "a.md",
                        "# t\n## s\n```java\nint a = 1;\n```\nWords.\n```java solution\nint a = 2;\n```\n");
        assertEquals(List.of(), exercise.faults());
        assertEquals(
                new LessonPart.Snippet(3, "int a = 1;", false, List.of(), "int a = 2;"),
                exercise.steps().get(0).parts().get(0));
    }
}
