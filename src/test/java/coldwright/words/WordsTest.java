package coldwright.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Locale;

class WordsTest {
    private static final Words SAMPLE = Words.of("words.sample");

    @AfterEach
    void showEnglish() {
        Words.show(Locale.ENGLISH);
    }

    @Test
    void valuesTakeTheirPlacesInTheOrderOfEachLanguage() {
        Object[] values = {"milk", -0.04, List.of("a", Phrase.of("words.sample", "ice"))};
        assertEquals(
                "5 % of milk at 0.0 °C: a, ice $1", SAMPLE.text(Locale.ENGLISH, "share", values));
        assertEquals(
                "Bei 0.0 °C: 5 % von milk: a, Eis", SAMPLE.text(Locale.GERMAN, "share", values));
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
