package coldwright.science.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.crystal.Method;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.Kitchen;
import coldwright.science.plan.Making;
import coldwright.words.Words;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The usual ranges against the tables that they come from. */
class PublishedStylesTest {
    private static final Ledger LEDGER = Ledger.of(PublishedStylesTest.class);
    private static final Tolerance PRINTED = Tolerance.of(0.1, "the table's own rounding");
    private static final Tolerance INSIDE = Tolerance.of(0, "the style's range holds it");

    private static final Set<String> SOURCES =
            Set.of(
                    "goff",
                    "goff-ice",
                    "mcgee",
                    "mcgee-sum",
                    "cfr",
                    "leitsaetze",
                    "gisslen",
                    "sweets",
                    StyleRange.RULE_OF_THUMB);

    private static Mix mix(Row row) {
        double msnf = row.number("msnf");
        double syrup = row.number("corn_syrup_solids");
        Composition c =
                Composition.NOTHING
                        .with(row.number("milk_fat"), Component.MILK_FAT)
                        .with(0.38 * msnf, Component.MILK_PROTEIN)
                        .with(0.54 * msnf, Component.LACTOSE)
                        .with(0.08 * msnf, Component.MILK_SALTS)
                        .with(row.number("sucrose"), Component.SUCROSE)
                        .with(0.19 * syrup, Component.GLUCOSE)
                        .with(0.14 * syrup, Component.MALTOSE)
                        .with(0.67 * syrup, Component.HIGHER_SACCHARIDES)
                        .with(row.number("stabiliser"), Component.STABILISER)
                        .with(row.number("emulsifier"), Component.EMULSIFIER)
                        .with(msnf, Tally.MILK_SOLIDS_NOT_FAT);
        Composition whole = c.with(100 - c.sumPercent(), Component.WATER);
        return Mix.of(Amount.grams(1000, Ingredient.own("a mix of the table", whole)));
    }

    @ParameterizedTest
    @FromTable("goff-mix-table")
    void eachMixOfTheTableIsSound(Row row) {
        Mix mix = mix(row);
        LEDGER.at(row, row.text("milk_fat") + " % fat, " + row.text("msnf") + " % MSNF")
                .compare(
                        "total solids, %",
                        row.number("total_solids"), mix.totalSolidsPercent(), PRINTED);
        Making making = new Making(Method.MACHINE, 0, 0, 80, Style.ICE_CREAM.servingC(), true);
        BatchState state =
                BatchState.of(mix, Style.ICE_CREAM, DietRules.AS_IT_IS, making, Kitchen.at(-18));
        assertEquals(List.of(), Faults.of(state));
        double ice = state.of(StyleQuantity.ICE);
        assertTrue(ice > 69 && ice < 78, "69 to 78 % says the source line of goff-ice: " + ice);
        double sweet = state.of(StyleQuantity.SWEETNESS);
        assertTrue(sweet > 12 && sweet < 16, "12.3 to 15.9 % says that line: " + sweet);
    }

    @ParameterizedTest
    @FromTable("mcgee-compositions")
    void theRangesHoldTheTable(Row row) {
        Style style = Style.valueOf(row.text("style"));
        Ledger.At at = LEDGER.at(row, row.text("what"));
        inside(at, style.range(StyleQuantity.FAT), row.between("fat_least", "fat_most"));
        inside(at, style.range(StyleQuantity.MSNF), row.between("msnf_least", "msnf_most"));
        double lactose = 0.545 * 0.175 * row.number("msnf_most");
        StyleRange sweet = style.range(StyleQuantity.SWEETNESS);
        assertTrue(row.number("sugar_least") >= sweet.least());
        assertTrue(row.number("sugar_most") + lactose <= sweet.most() + 3.5, "sugar as sucrose");
    }

    private static void inside(Ledger.At at, StyleRange range, Band published) {
        for (double end : new double[] {published.low(), published.high()}) {
            double nearest = Math.max(range.least(), Math.min(range.most(), end));
            at.compare("an end within the style's range, %", end, nearest, INSIDE);
        }
    }

    @Test
    void eachRangeHasItsSourceInEachLanguage() {
        for (Style style : Style.values()) {
            for (StyleQuantity quantity : StyleQuantity.values()) {
                StyleRange range = style.range(quantity);
                assertTrue(SOURCES.contains(range.source()), range::source);
                assertTrue(range.least() <= range.most());
                for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                    String text = range.sourcePhrase().in(language);
                    assertFalse(text.startsWith("source."), text);
                }
            }
            assertEquals(0, style.range(StyleQuantity.SERVING).beyond(style.servingC()));
        }
        assertTrue(Words.of("science.style").has("source.practice"));
    }

    @Test
    void eachStyleIsFoundByItsName() {
        for (Style style : EnumSet.allOf(Style.class)) {
            assertEquals(style, Style.named(style.words()));
            assertEquals(style, Style.named(style.name()));
        }
    }
}
