package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.EnglishWords;
import coldwright.batch.BatchAnalysis;
import coldwright.batch.RecipeFileReader;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Shelf;
import coldwright.words.Words;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

class MakeSheetTest {
    private static final Map<String, BatchAnalysis> BATCHES = new HashMap<>();

    private static BatchAnalysis batch(String name) throws IOException {
        if (!BATCHES.containsKey(name)) {
            BATCHES.put(name, read(name));
        }
        return BATCHES.get(name);
    }

    private static BatchAnalysis read(String name) throws IOException {
        try (InputStream in = MakeSheetTest.class.getResourceAsStream("/batches/" + name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return BatchAnalysis.of(RecipeFileReader.read(name, text));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "sorbet, A4", "oat, A4", "caramel, A4", "coffee, A4",
        "sorbet, LETTER", "oat, LETTER", "caramel, LETTER", "coffee, LETTER"
    })
    void aUsualBatchFitsOnePage(String name, PaperSize paper) throws IOException {
        MakeSheet.Pages pages = MakeSheet.file(batch(name + ".batch"), paper, true);
        assertEquals(1, pages.pages());
        try (PDDocument document = Loader.loadPDF(pages.bytes())) {
            assertEquals(1, document.getNumberOfPages());
        }
    }

    @Test
    void howItWasKeptIsSaidWithTheSizeThatASteadyFreezerGives() throws IOException {
        BatchAnalysis all =
                BatchAnalysis.of(
                        RecipeFileReader.read(
                                "caramel",
                                "method: shaken\nstored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h\n\ningredient,grams\nwhole milk,520\nheavy cream,180\nsucrose,130\nsalt,3\n"));
        String page =
                MakeSheet.html(all, PaperSize.A4)
                        .replaceAll("</?span[^>]*>", "")
                        .replaceAll("[\\s\u00a0]+", " ");
        long kept = Math.round(all.crystals().orElseThrow().kept().orElseThrow().meanUm().middle());
        long steady =
                Math.round(all.crystals().orElseThrow().steady().orElseThrow().meanUm().middle());

        assertTrue(
                page.contains(
                        "Kept 7 days, temperature varying by ±3 °C, warmed to −6 °C for 2 h: %d µm, in a steady freezer %d µm."
                                .formatted(kept, steady)),
                () -> page.substring(page.indexOf("Serve and store")));
        assertTrue(kept > steady);
    }

    @Test
    void aBatchOfManyLinesTakesMorePagesAndSaysSo() {
        StringBuilder own = new StringBuilder("name: Long\n");
        StringBuilder rows = new StringBuilder("\ningredient,grams\n");
        for (int i = 0; i < 50; i++) {
            own.append("own: syrup %d = water 60, sucrose 40%n".formatted(i));
            rows.append("syrup %d,%d%n".formatted(i, 10 + i));
        }
        BatchAnalysis all = BatchAnalysis.of(RecipeFileReader.read("long", own.toString() + rows));
        int pages = MakeSheet.file(all, PaperSize.A4, true).pages();
        assertTrue(pages > 1, "pages: " + pages);
    }

    @ParameterizedTest
    @CsvSource({
        "sorbet, Ice with salt, true",
        "sorbet, Raw egg, false",
        "sorbet, Alcohol</b>, false",
        "sorbet, <b>Hot sugar, false",
        "sorbet, pasteurise, false",
        "oat, Raw flour and oats, true",
        "oat, Ice with salt, false",
        "oat, No glass, true",
        "caramel, Raw egg, true",
        "caramel, <b>Hot sugar, true",
        "caramel, 21 CFR 1240.61(c), true",
        "caramel, Moving parts, true",
        "coffee, Alcohol</b>, true",
        "coffee, Then stir in rum, true",
        "coffee, Shake or stir through after, true"
    })
    void saysWhatConcernsThisBatchAndNoMore(String name, String words, boolean said)
            throws IOException {
        assertEquals(
                said, MakeSheet.html(batch(name + ".batch"), PaperSize.A4).contains(words), words);
    }

    @ParameterizedTest
    @CsvSource({"sorbet", "oat", "caramel", "coffee"})
    void theFileIsCompleteInItselfAndToldToEverybody(String name) throws IOException {
        Pages.requireSound(MakeSheet.html(batch(name + ".batch"), PaperSize.A4));
    }

    @Test
    void spoonsStandOnlyWhereTheyAreHonest() {
        assertEquals(Optional.of("1 cup"), SpoonText.of(Amount.grams(200, Shelf.SUCROSE)));
        assertEquals(Optional.of("½ tsp"), SpoonText.of(Amount.grams(2.08, Shelf.SUCROSE)));
        assertEquals(
                Optional.of("1 cup and 1 tbsp"), SpoonText.of(Amount.grams(212.5, Shelf.SUCROSE)));
        assertEquals(Optional.empty(), SpoonText.of(Amount.grams(200, Shelf.GLUCOSE)));
        assertEquals(Optional.empty(), SpoonText.of(Amount.grams(0.2, Shelf.SUCROSE)));
    }

    @Test
    void theIceIsThatOfTheFile() throws IOException {
        String html = MakeSheet.html(batch("sorbet.batch"), PaperSize.A4);
        assertTrue(html.contains("ice, 2000\u00A0g"), html);
        assertTrue(html.contains("table or rock salt, 500\u00A0g"), html);
        assertFalse(MakeSheet.html(batch("oat.batch"), PaperSize.A4).contains("rock salt"));
    }

    @Test
    void aFilesNameIsPlain() {
        assertEquals("blood-orange-sorbet-make-sheet", MakeSheet.fileName("Blood-orange / sorbet"));
        assertEquals("make-sheet", MakeSheet.fileName("../.."));
    }

    @ParameterizedTest
    @CsvSource({"sorbet", "oat", "caramel", "coffee"})
    void aGermanSheetIsGermanAndFitsOnePage(String name) throws IOException {
        try {
            Words.show(Locale.GERMAN);
            BatchAnalysis all = batch(name + ".batch");
            String text =
                    MakeSheet.html(all, PaperSize.A4)
                            .replaceAll("(?s)<(style|svg)\\b.*?</\\1>|<[^>]*>", " ")
                            .replace(all.batch().name(), "");
            assertTrue(text.contains("Zubereitung"), text);
            assertEquals(List.of(), EnglishWords.in(List.of(text.split("\\R"))));
            assertFalse(
                    text.replaceAll("CFR [\\d.]+|3-501\\.14", "").matches("(?s).*\\d\\.\\d.*"),
                    text);
            assertEquals(1, MakeSheet.file(all, PaperSize.A4, true).pages());
        } finally {
            Words.show(Locale.ENGLISH);
        }
    }
}
