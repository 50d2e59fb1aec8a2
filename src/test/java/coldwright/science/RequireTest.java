package coldwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.words.Words;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Locale;

class RequireTest {
    @ParameterizedTest
    @CsvSource({
        "-2.64, −2.64",
        "0, 0",
        "-0.0, 0",
        "2000000, 2000000",
        "0.1, 0.1",
        "123456.789, 123457",
        "1.5e-7, 1.5E−7",
        "-300, −300",
        "NaN, not a number",
        "Infinity, infinite"
    })
    void speaksNumbersAsASentenceWould(double value, String spoken) {
        assertEquals(spoken, Require.format(value));
    }

    @Test
    void namesTheValueTheRangeAndTheLikelyCause() {
        assertEquals(
                "temperatureC is 268.15; it must be between −60 and 120 °C: was this kelvin or °F?",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Temperature.require("temperatureC", 268.15))
                        .getMessage());
        assertEquals(
                "temperatureC is −300; it must be between −60 and 120 °C",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Temperature.require("temperatureC", -300))
                        .getMessage());
        assertEquals(
                "massG is −5 g; it must be zero or more",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Require.notNegative("massG", -5, "g"))
                        .getMessage());
    }

    @Test
    void speaksTheLanguageShown() {
        Words.show(Locale.GERMAN);
        try {
            assertEquals(
                    "Salz ist 120; erlaubt ist 0 bis 100 %",
                    assertThrows(
                                    IllegalArgumentException.class,
                                    () ->
                                            Require.within(
                                                    "Salz", 120, new Require.Range(0, 100, "%")))
                            .getMessage());
        } finally {
            Words.show(Locale.ENGLISH);
        }
    }
}
