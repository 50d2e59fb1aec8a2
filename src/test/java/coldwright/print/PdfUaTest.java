package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** PDF/UA-1 (ISO 14289-1:2014), as the reference validator veraPDF checks it. */
class PdfUaTest {
    private static final String LESSON =
            """
            # Oats & malt

            <!--
            track: Freezing
            minutes: 5
            -->

            > **Caution.** Hot tray at 180 °C.

            ## Toast

            Some *words*, a [link](https://example.org) and a list:

            - one
            - two

            ```forecast
            Draw it.
            curve: time 0 to 9 min; colour 0 to 3
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
            """;

    @ParameterizedTest
    @EnumSource
    void aHandoutPasses(HandoutEdition edition) throws Exception {
        Figure figure =
                Figure.of("Brown & \"dark\"")
                        .x("time", "min")
                        .line("oats", 0, 9, x -> x)
                        .source("Brunt 1999");
        Drawing drawing =
                Drawing.of(
                                "A globule",
                                new Drawing.Field(20, 14, "µm"),
                                new Drawing.ScaleBar(5, "5 µm"))
                        .at(
                                new Drawing.Moment(
                                        0,
                                        "",
                                        "",
                                        List.of(new Piece.Disc(5, 5, 2, Tint.of(Tint.Role.FAT)))));
        int line = LESSON.substring(0, LESSON.indexOf("```java")).split("\n", -1).length;
        SnippetOutput output =
                new SnippetOutput("printed", "40", "", List.of(figure, drawing), Optional.empty());
        HandoutOptions options = new HandoutOptions(edition, PaperSize.A4, true, Optional.empty());
        String html =
                Handout.html(LessonReader.read("oats.md", LESSON), Map.of(line, output), options);
        ValidationResult result = validated(PdfWriter.of(html));
        List<String> failures =
                result.getTestAssertions().stream()
                        .filter(one -> one.getStatus() == TestAssertion.Status.FAILED)
                        .map(one -> one.getRuleId().getClause() + ": " + one.getMessage())
                        .distinct()
                        .toList();
        assertEquals(List.of(), failures);
        assertTrue(result.isCompliant() && result.getTotalAssertions() > 500, result.toString());
    }

    private static ValidationResult validated(byte[] pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                Foundries.defaultInstance()
                        .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1)) {
            return Foundries.defaultInstance()
                    .createValidator(PDFAFlavour.PDFUA_1, false)
                    .validate(parser);
        }
    }
}
