package coldwright.desk.brew.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchReader;
import coldwright.batch.Reckoning;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

class CaptionTest {
    private static Reckoning job(String name) throws BatchFault {
        return job(name, "", "");
    }

    private static Reckoning job(String name, String line, String instead) throws BatchFault {
        try (var file = CaptionTest.class.getResourceAsStream("/jobs/" + name + ".batch")) {
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return Reckoning.of(BatchReader.read(name, text.replaceAll(line, instead)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource({"lean-sorbet-in-a-bag", "rich-custard-in-a-tub", "liqueur-that-will-not-set"})
    void partsAddUpToTheWholeButForWhatIsTooLittleToDraw(String name) throws BatchFault {
        List<Part> parts = Part.of(job(name).mix());

        assertEquals(100, parts.stream().mapToDouble(Part::percent).sum(), 0.2);
    }

    @Test
    void theWordsBelowThePicturesSayWhatTheReckoningSays() throws BatchFault {
        Reckoning sorbet = job("lean-sorbet-in-a-bag");
        String minutes = String.valueOf(Math.round(sorbet.plan().minutesToSoftServe()));
        double um = sorbet.keeping().orElseThrow().night().meanUm().middle();

        assertTrue(Caption.clock(sorbet).startsWith("soft-serve: " + minutes + "\u00a0min ("));
        assertTrue(Caption.crystals(sorbet).startsWith(Math.round(um) + " µm ("));
        assertTrue(Caption.crystals(sorbet).endsWith(Told.when(sorbet)));
    }

    @Test
    void whatNeverSetsSaysSo() throws BatchFault {
        Reckoning strong = job("liqueur-that-will-not-set", ",150", ",500");

        assertEquals("never soft-serve", Caption.clock(strong));
    }

    @Test
    void whatIsWarmedUntilNearlyAllIceIsGoneIsNotSaidToBeKeptSo() throws BatchFault {
        Reckoning melted =
                job(
                        "after-heat-shock",
                        "stored: .*\n",
                        "stored: 7 days, swinging 1 °C, warmed to -0.5 °C for 6 h\n");

        assertEquals("after one night", Told.when(melted));
        assertTrue(Told.crystals(melted).startsWith("Kept so, nearly all its ice melts"));
        assertEquals(
                melted.keeping().orElseThrow().tasted().meanUm(),
                coldwright.batch.Keeping.tastedUm(melted.batch()).orElseThrow());
    }

    @Test
    void littleWaterIsSaidToTellFirmFromSoft() throws BatchFault {
        Recipe dry = Recipe.toBegin("x").with(1, new Line("400", "sucrose"));
        Glance little = Glance.of(BatchReader.read("dry", RecipeText.of(dry)));
        Glance usual = Glance.of(job("lean-sorbet-in-a-bag").batch());

        assertTrue(
                Told.facts(little).stream().anyMatch(one -> one.startsWith("It holds only ")),
                () -> Told.facts(little).toString());
        assertTrue(Told.facts(usual).stream().noneMatch(one -> one.startsWith("It holds only ")));
    }
}
