package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.RecipeLine;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;

import java.util.List;

class PasteModelTest {
    private static final String TEXT =
            """
            Lemon ice
            4 egg yolks
            2 tbsp honey
            1 lemon
            500 milk
            100 g xyz powder
            Method
            Whisk and freeze.
            """;

    private final PasteModel model = new PasteModel(TEXT, List.of());

    @Test
    void understoodLinesKeepTheirWordsAndOthersDoNotCount() {
        List<RecipeLine> all = model.all();
        assertEquals(5, all.size());
        assertEquals(72, all.get(0).grams(), 1e-9);
        assertEquals("2 tbsp", all.get(1).amount().text());
        assertEquals(
                List.of(true, true, false, false, false),
                all.stream().map(RecipeLine::counts).toList());
        assertEquals("Whisk and freeze.", model.pasted().notes());
        assertEquals("Lemon ice", model.pasted().title());
    }

    @Test
    void aChoiceDecidesALine() {
        assertFalse(model.isDecided(2));
        model.choose(2, model.pasted().lines().get(2).choices().get(1));
        assertTrue(model.isDecided(2));
        assertEquals(
                List.of("lemon juice", "lemon zest"),
                model.rows(2).stream().map(RecipeLine::name).toList());
        model.choose(4, Shelf.SKIM_MILK_POWDER);
        assertEquals(100, model.rows(4).get(0).grams());
    }
}
