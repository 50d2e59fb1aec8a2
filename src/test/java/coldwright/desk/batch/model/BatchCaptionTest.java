package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchPreview;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeFileReader;
import coldwright.batch.RecipeLine;
import coldwright.words.Words;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

class BatchCaptionTest {
    private static BatchAnalysis job(String name) {
        return job(name, "", "");
    }

    private static BatchAnalysis job(String name, String line, String instead) {
        try (var file = BatchCaptionTest.class.getResourceAsStream("/jobs/" + name + ".batch")) {
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return BatchAnalysis.of(RecipeFileReader.read(name, text.replaceAll(line, instead)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource({"lean-sorbet-in-a-bag", "rich-custard-in-a-tub", "liqueur-that-will-not-set"})
    void partsAddUpToTheWholeButForWhatIsTooLittleToDraw(String name) {
        List<BatchShare> parts = BatchShare.of(job(name).mix());

        assertEquals(100, parts.stream().mapToDouble(BatchShare::percent).sum(), 0.2);
    }

    @Test
    void theWordsBelowThePicturesSayWhatTheReckoningSays() {
        BatchAnalysis sorbet = job("lean-sorbet-in-a-bag");
        String minutes = String.valueOf(Math.round(sorbet.plan().minutesToSoftServe()));
        double um = sorbet.crystals().orElseThrow().night().meanUm().middle();

        assertTrue(
                BatchSentences.clockCaption(sorbet)
                        .startsWith("soft-serve: " + minutes + "\u00a0min ("));
        assertTrue(
                BatchSentences.crystalsCaption(sorbet.report())
                        .startsWith(Math.round(um) + "\u00a0µm ("));
        assertTrue(BatchSentences.crystalsCaption(sorbet.report()).endsWith("after one night"));
        assertTrue(BatchSentences.freezingCaption(sorbet.report()).endsWith("\u00a0°C"));
    }

    @Test
    void whatNeverSetsSaysSo() {
        BatchAnalysis strong = job("liqueur-that-will-not-set", ",150", ",500");

        assertEquals("never soft-serve", BatchSentences.clockCaption(strong));
    }

    @Test
    void whatIsWarmedUntilNearlyAllIceIsGoneIsNotSaidToBeKeptSo() {
        BatchAnalysis melted =
                job(
                        "after-heat-shock",
                        "stored: .*\n",
                        "stored: 7 days, swinging 1 °C, warmed to -0.5 °C for 6 h\n");

        assertTrue(BatchSentences.crystalsCaption(melted.report()).endsWith("after one night"));
        assertTrue(
                BatchSentences.crystals(melted.report())
                        .startsWith("Kept so, nearly all its ice melts"));
        assertEquals(
                melted.crystals().orElseThrow().tasted().meanUm(),
                melted.crystals().orElseThrow().night().meanUm());
    }

    @Test
    void littleWaterIsSaidToTellFirmFromSoft() {
        Recipe dry = Recipe.starter("x").with(1, new RecipeLine("400", "sucrose"));
        BatchPreview little = BatchPreview.of(dry);
        BatchPreview usual = BatchPreview.of(job("lean-sorbet-in-a-bag").batch());

        assertTrue(
                BatchSentences.facts(little.report()).stream()
                        .anyMatch(one -> one.startsWith("It has only ")),
                () -> BatchSentences.facts(little.report()).toString());
        assertTrue(
                BatchSentences.facts(usual.report()).stream()
                        .noneMatch(one -> one.startsWith("It has only ")));
    }

    /** Nothing of a batch that a German window shows is left in English. */
    @Test
    void aGermanPageIsGermanThroughout() {
        BatchAnalysis all = job("after-heat-shock");
        try {
            Words.show(Locale.GERMAN);
            List<String> said = new ArrayList<>(BatchSentences.facts(all.report()));
            said.addAll(BatchSentences.plan(all));
            said.add(BatchSentences.crystals(all.report()));
            all.report().findings().forEach(one -> said.addAll(BatchSentences.finding(one)));
            said.addAll(BatchSentences.cautions(all));
            said.add(BatchSentences.clockCaption(all));
            said.add(BatchSentences.crystalsCaption(all.report()));
            assertTrue(said.size() > 15, said::toString);
            List<String> english =
                    said.stream()
                            .filter(one -> one.matches("(?i).*\\b(the|and|of|is|to|with)\\b.*"))
                            .toList();
            assertEquals(List.of(), english);
        } finally {
            Words.show(Locale.ENGLISH);
        }
    }
}
