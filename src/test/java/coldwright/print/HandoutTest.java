package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.lesson.Part;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.io.IOException;
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

    private static String html(Edition edition, boolean data) {
        int line =
                LESSON.steps().get(0).parts().stream()
                        .filter(Part.Snippet.class::isInstance)
                        .findFirst()
                        .orElseThrow()
                        .line();
        Given given = new Given("printed <1>\u0007", "40", "", List.of(FIGURE, FIGURE));
        Wish wish = new Wish(edition, Paper.A4, data, Optional.empty());
        return Handout.html(LESSON, Map.of(line, given), wish);
    }

    @ParameterizedTest
    @EnumSource
    void theFileIsCompleteInItselfAndToldToEverybody(Edition edition) {
        Pages.requireSound(html(edition, true));
    }

    @Test
    void theBlankGivesNothingAway() {
        String html = html(Edition.BLANK, false);
        assertFalse(html.contains("because of sugar"));
        assertFalse(html.contains("(right)"));
        assertFalse(html.contains("printed"));
        assertFalse(html.contains("Mind the smoke"));
        assertTrue(html.contains("What came out"));
        assertTrue(html.contains("class=\"caution\""));
    }

    @Test
    void onlyTheTeachersHasNotesChecksAndRightAnswers() {
        assertFalse(html(Edition.READER, false).contains("Mind the smoke"));
        assertFalse(html(Edition.READER, false).contains("(right)"));
        String html = html(Edition.ANSWERS, false);
        assertTrue(html.contains("Mind the smoke"));
        assertTrue(html.contains("<b>brown</b> <i class=\"right\">(right)</i>"));
        assertTrue(html.contains("<code>oats</code> is 40 within 1"));
    }

    @Test
    void coloursCodeNumbersFiguresAndNamesASourceOnce() {
        String html = html(Edition.ANSWERS, false);
        assertTrue(html.contains("<span class=\"java-keyword\">double</span> oats"));
        assertTrue(html.contains("<b>Figure 2.</b> Brown. Colour against time, min."));
        assertEquals(1, html.split("<li id=\"source-", -1).length - 1);
        assertTrue(html.contains("180\u00A0°C"));
    }

    @Test
    void theDataStandInATableOnlyIfAskedFor() {
        assertFalse(html(Edition.READER, false).contains("<table"));
        assertTrue(html(Edition.READER, true).contains("<th scope=\"col\">"));
    }

    @Test
    void becomesPagesWithTheirLettersAsText() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(html(Edition.READER, false)))) {
            String text = new PDFTextStripper().getText(pdf);
            assertTrue(text.contains("Oats & <malt>"), text);
            assertTrue(text.contains("1 of " + pdf.getNumberOfPages()), text);
            assertEquals(210, pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.1);
        }
    }
}
