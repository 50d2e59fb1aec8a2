package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonReader;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

class HandoutTest {
    private static final Lesson LESSON =
            LessonReader.read(
                    "oats.md",
                    """
                    # Oats & <malt>

                    ## Toast

                    > **Caution.** Hot tray at 180 °C.

                    ```forecast
                    Which?
                    - pale
                    - * brown

                    They brown because of sugar.
                    ```

                    ```java
                    double oats = 40; // dial 0 to 90 step 5 g
                    ```

                    ```check
                    oats is 40 within 1 -- Brunt 1999, Oats
                    ```

                    ```teacher
                    Mind the smoke.
                    ```
                    """);
    private static final Figure FIGURE =
            Figure.of("Brown")
                    .x("time", "min")
                    .y("colour", "")
                    .line("oats", 0, 9, x -> x / 3)
                    .source("Brunt 1999, Oats");

    private static String html(HandoutEdition edition, boolean data) {
        int line =
                LESSON.steps().get(0).parts().stream()
                        .filter(LessonPart.Snippet.class::isInstance)
                        .findFirst()
                        .orElseThrow()
                        .line();
        SnippetOutput snippetOutput =
                new SnippetOutput(
                        "printed <1>\u0007", "40", "", List.of(FIGURE, FIGURE), Optional.empty());
        HandoutOptions handoutOptions =
                new HandoutOptions(edition, PaperSize.A4, data, Optional.empty());
        return Handout.html(LESSON, Map.of(line, snippetOutput), handoutOptions);
    }

    @ParameterizedTest
    @EnumSource
    void theFileIsCompleteInItselfAndToldToEverybody(HandoutEdition edition) {
        Pages.requireSound(html(edition, true));
    }

    @Test
    void theBlankGivesNothingAway() {
        String html = html(HandoutEdition.BLANK, false);
        assertFalse(html.contains("because of sugar"));
        assertFalse(html.contains("(right)"));
        assertFalse(html.contains("printed"));
        assertFalse(html.contains("Mind the smoke"));
        assertTrue(html.contains("Result"));
        assertTrue(html.contains("class=\"caution\""));
    }

    private static final String TRAYS =
            """
            # Trays

            ## Toast

            Oats brown from 150 °C on.

            ```forecast
            Which?
            - * brown
            - pale
            ```

            ```java
            double toasted = 40; // dial 0 to 90 step 5 g
            ```

            They turned brown.

            > **Caution.** Hot tray.

            Now the second tray.

            ```forecast
            How long?
            number: 12 min within 2
            ```

            ```java
            dry
            ```

            So it took twelve.

            ```check
            toasted is 40 within 1
            ```

            ## Your turn

            Toast less.

            ```java
            double least = 0;
            ```

            ```java solution
            double least = 20;
            ```

            ## Kitchen trial

            Weigh 30 g.

            The calculator predicts 12<!-- = dry --> minutes.
            """;

    @Test
    void theBlankHasNoAnswersInSentencesAndCodeOnlyToChange() {
        String html =
                Handout.html(
                        LessonReader.read("trays.md", TRAYS),
                        Map.of(),
                        HandoutOptions.of(HandoutEdition.BLANK));
        Pages.requireSound(html);
        for (String kept :
                List.of(
                        "Oats brown",
                        "Hot tray",
                        "Now the second tray",
                        "Toast less",
                        "least",
                        "30")) {
            assertTrue(html.contains(kept), kept);
        }
        for (String given :
                List.of("They turned brown", "it took twelve", "predicts", "toasted", "dry")) {
            assertFalse(html.contains(given), given);
        }
        String read =
                Handout.html(
                        LessonReader.read("trays.md", TRAYS),
                        Map.of(),
                        HandoutOptions.of(HandoutEdition.READER));
        assertTrue(read.contains("it took twelve") && read.contains("predicts"), read);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4, 9, 14, 24})
    void allFiguresAreOnOnePage(int count) throws IOException {
        List<Exhibit> figures = Collections.nCopies(count, FIGURE);
        for (PaperSize paper : PaperSize.values()) {
            String html =
                    Handout.html(
                            LESSON,
                            Map.of(1, drawn("", figures)),
                            new HandoutOptions(
                                    HandoutEdition.FIGURES, paper, false, Optional.empty()));
            Pages.requireSound(html);
            assertEquals(count, html.split("<svg ", -1).length - 1);
            assertEquals(1, PdfWriter.pageCount(PdfWriter.of(html)), count + " on " + paper);
        }
    }

    private static final String DRAWS =
            """
            # Trays

            ## Toast

            Two trays.

            ```forecast
            How does the colour rise?
            curve: time 0 to 9 min; colour 0 to 3
            ```

            ```java
            show(brown);
            ```
            """;

    private static String drawing(HandoutEdition edition, SnippetOutput snippetOutput) {
        Lesson lesson = LessonReader.read("trays.md", DRAWS);
        int line = DRAWS.substring(0, DRAWS.indexOf("```java")).split("\n", -1).length;
        HandoutOptions handoutOptions =
                new HandoutOptions(edition, PaperSize.A4, false, Optional.empty());
        return Handout.html(lesson, Map.of(line, snippetOutput), handoutOptions);
    }

    @Test
    void theBlankHasEmptyAxesWithRoundNumbersForAForecastAndAFigure() {
        String html = drawing(HandoutEdition.BLANK, drawn("", List.of(FIGURE)));
        Pages.requireSound(html);
        assertEquals(2, html.split("<figure class=\"empty\">", -1).length - 1, html);
        assertTrue(html.contains(">Brown</text>"), html);
        assertTrue(html.contains("Empty axes to draw on: time, min; colour."), html);
        assertTrue(html.contains(">0.5</text>"), "the y axis has numbers between its ends");
        assertTrue(html.contains(">time, min</text>"), html);
        assertFalse(html.contains("class=\"line\">\u00A0</p>"), html);
        assertFalse(html.contains(">oats</text>"), "no legend and no curve");
    }

    @Test
    void theBlankHasTheWordsUnderBarsAndLeavesTheBarsOut() {
        Figure bars =
                Figure.of("Trays")
                        .y("oats", "g")
                        .bars("oats", List.of("upper", "lower"), new double[] {300, 212});
        String html = drawing(HandoutEdition.BLANK, drawn("", List.of(bars)));
        Pages.requireSound(html);
        assertTrue(html.contains(">upper</text>"), html);
        assertFalse(html.contains("212"), html);
        assertFalse(html.contains("NaN"), html);
    }

    @Test
    void theBlankLeavesLinesOnlyWhereSomethingIsSaid() {
        String line = "<p class=\"line\">\u00A0</p>";
        assertFalse(drawing(HandoutEdition.BLANK, drawn("", List.of())).contains("came out"));
        String said = drawing(HandoutEdition.BLANK, drawn("brown", List.of(FIGURE)));
        assertEquals(1, said.split(line, -1).length - 1);
        String words = drawing(HandoutEdition.BLANK, drawn("brown", List.of()));
        assertEquals(3, words.split(line, -1).length - 1);
        HandoutOptions handoutOptions = HandoutOptions.of(HandoutEdition.BLANK);
        String unrun = Handout.html(LessonReader.read("trays.md", DRAWS), Map.of(), handoutOptions);
        assertEquals(3, unrun.split(line, -1).length - 1);
    }

    @Test
    void aShortBeginStaysWithItsHeadingAndIsClosedAgain() {
        String html = drawing(HandoutEdition.READER, SnippetOutput.NOTHING);
        int begin = html.indexOf("<div class=\"begin\">");
        assertTrue(begin > 0 && begin < html.indexOf("<h2>"), html);
        assertTrue(html.indexOf("</div>\n</div>\n<pre") > html.indexOf("How does the"), html);
    }

    @Test
    void aTemperatureIsNeverBrokenBeforeItsUnitOrInIt() {
        assertEquals(
                "from <span class=\"unit\">−18.5\u00A0°C</span> on",
                HtmlMarkup.line("from −18.5 °C on"));
        assertTrue(html(HandoutEdition.READER, false).contains(">180\u00A0°C</span>"));
    }

    @Test
    void aLineOfCodeGoesOnBelowFurtherInThanItBegan() {
        String html = HtmlMarkup.java("if (brown) {\n    // so\n\n}");
        assertEquals(4, html.split("class=\"line\"", -1).length - 1, html);
        assertTrue(html.contains("padding-left: 4.50em; text-indent: -4.50em\">    <span"), html);
        assertTrue(html.contains(">\u00A0</span>"), html);
    }

    @Test
    void onlyTheTeachersSaysWhatASolutionGives() {
        String text = DRAWS + "\n```java solution\nshow(brown); 7\n```\n";
        Lesson lesson = LessonReader.read("trays.md", text);
        HandoutOptions handoutOptions = HandoutOptions.of(HandoutEdition.ANSWERS);
        Map<Integer, SnippetOutput> given =
                HandoutPlay.of(
                        lesson,
                        handoutOptions,
                        (above, code) -> gives(code.contains("7") ? "-7" : ""),
                        outcome -> "it failed");
        assertTrue(
                Handout.html(lesson, given, handoutOptions)
                        .contains("<pre class=\"came\">−7</pre>"),
                given.toString());
        assertTrue(
                HandoutPlay.of(
                                lesson,
                                HandoutOptions.of(HandoutEdition.READER),
                                (above, code) -> gives(""),
                                outcome -> "it failed")
                        .values()
                        .stream()
                        .allMatch(one -> one.solved().isEmpty()));
    }

    private static SnippetOutput drawn(String printed, List<Exhibit> exhibits) {
        return new SnippetOutput(printed, "", "", exhibits, Optional.empty());
    }

    private static FinishedRun gives(String value) {
        RunOutcome outcome = new RunOutcome.Finished(value, "int");
        return new FinishedRun(outcome, "", false, List.of(), Duration.ZERO);
    }

    @Test
    void onlyTheTeachersHasNotesChecksAndRightAnswers() {
        assertFalse(html(HandoutEdition.READER, false).contains("Mind the smoke"));
        assertFalse(html(HandoutEdition.READER, false).contains("(right)"));
        String html = html(HandoutEdition.ANSWERS, false);
        assertTrue(html.contains("Mind the smoke"));
        assertTrue(html.contains("<b>brown</b> <i class=\"right\">(right)</i>"));
        assertTrue(html.contains("<code>oats</code> is 40 within 1"));
    }

    @Test
    void coloursCodeNumbersFiguresAndNamesASourceOnce() {
        String html = html(HandoutEdition.ANSWERS, false);
        assertTrue(html.contains("<span class=\"java-keyword\">double</span> oats"));
        assertTrue(html.contains("<b>Figure 2.</b> Brown. Colour against time, min."));
        assertEquals(1, html.split("<li id=\"source-", -1).length - 1);
        assertTrue(html.contains("180\u00A0°C"));
    }

    @Test
    void theDataStandInATableOnlyIfAskedFor() {
        assertFalse(html(HandoutEdition.READER, false).contains("<table"));
        assertTrue(html(HandoutEdition.READER, true).contains("<th scope=\"col\">"));
    }

    @Test
    void becomesPagesWithTheirLettersAsText() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfWriter.of(html(HandoutEdition.READER, false)))) {
            String text = new PDFTextStripper().getText(pdf);
            assertTrue(text.contains("Oats & <malt>"), text);
            assertTrue(text.contains("1 of " + pdf.getNumberOfPages()), text);
            assertEquals(210, pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.1);
        }
    }
}
