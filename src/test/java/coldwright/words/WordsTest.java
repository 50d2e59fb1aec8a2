package coldwright.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.figure.UnitConversion;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Locale;

class WordsTest {
    private static final Words SAMPLE = Words.of("words.sample");

    @AfterEach
    void showEnglish() {
        Words.show(Locale.ENGLISH);
        Words.show(Words.Units.METRIC);
    }

    @Test
    void shownTextsHaveTheUnitsAndTheDecimalMarkOfTheReader() {
        Phrase all = Phrase.of("words.sample", "units", -18.0, 1.5, 100.0, -12.34);
        assertEquals("-18 -> −18 °C, ±1.5 °C, 100 g, −12.3 and 100.0", all.shown());
        UnitConversion units = new UnitConversion(true, true);
        Words.show(new Words.Units(units::unit, units::value));
        assertEquals("-18 -> −0.4 °F, ±2.7 °F, 3.53 oz, 9.8 and 3.53", all.shown());
        assertEquals("-18 -> −18 °C, ±1.5 °C, 100 g, −12.3 and 100.0", all.english());
        Words.show(Locale.GERMAN);
        assertEquals("−0,4 °F; ±2,7 °F; 3,53 oz; 9,8; 3,53", all.shown());
        assertEquals("−18 °C; ±1,5 °C; 100 g; −12,3; 100,0", all.in(Locale.GERMAN));
    }

    @Test
    void filesAndJsonKeepThePointUnderAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Phrase all = Phrase.of("words.sample", "units", -18.0, 1.5, 100.0, -12.34);
            assertEquals("-18 -> −18 °C, ±1.5 °C, 100 g, −12.3 and 100.0", all.english());
            assertEquals("-18 -> −18 °C, ±1.5 °C, 100 g, −12.3 and 100.0", all.shown());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void valuesTakeTheirPlacesInTheOrderOfEachLanguage() {
        Object[] values = {"milk", -0.04, List.of("a", Phrase.of("words.sample", "ice"))};
        assertEquals(
                "5 % of milk at 0.0 °C: a, ice $1", SAMPLE.text(Locale.ENGLISH, "share", values));
        assertEquals(
                "Bei 0,0 °C: 5 % von milk: a, Eis", SAMPLE.text(Locale.GERMAN, "share", values));
    }

    @Test
    void aNumberKeepsSixFiguresUnlessThePlaceRoundsIt() {
        assertEquals("−2.64123 or −2.6", SAMPLE.text(Locale.ENGLISH, "number", -2.641234, -2.64));
        assertEquals("1234567 or never", SAMPLE.text(Locale.ENGLISH, "number", 1234567, "never"));
    }

    @Test
    void whatIsNotTranslatedIsInEnglishAndWhatIsUnknownIsItsKey() {
        assertEquals("ice $1", SAMPLE.text(Locale.FRENCH, "ice"));
        assertEquals("no.such", SAMPLE.text(Locale.GERMAN, "no.such", 1));
    }

    @Test
    void aPhraseIsInTheLanguageThatIsShownOrInEnglish() {
        Words.show(Locale.GERMAN);
        Phrase ice = Phrase.of("words.sample", "ice");
        assertEquals("Eis", ice.shown());
        assertEquals("ice $1", ice.toString());
    }
}
