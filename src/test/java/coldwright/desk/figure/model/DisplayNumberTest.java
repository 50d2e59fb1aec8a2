package coldwright.desk.figure.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.model.PreferencesModel;
import coldwright.desk.run.PrintedOutput;
import coldwright.workbook.settings.Preferences;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

class DisplayNumberTest {
    @ParameterizedTest
    @CsvSource({
        "-1.4700,−1.47",
        "0,0",
        "-0.0,0",
        "1200000,1200000",
        "0.1234567,0.123457",
        "1e-9,1E−9"
    })
    void setsNumbers(double value, String expected) {
        assertEquals(expected, DisplayNumber.of(value));
    }

    @ParameterizedTest
    @CsvSource({
        "79.2024,2,79.2",
        "-1.4723,0.03,−1.472",
        "0.12345678,0,0.123457",
        "12345.6,500,12346"
    })
    void roundsToTheTolerance(double value, double tolerance, String expected) {
        assertEquals(expected, DisplayNumber.toTolerance(value, tolerance));
    }

    @Test
    void readsOnlyNumbers() {
        assertEquals(-1.5, DisplayNumber.read("−1,5").getAsDouble());
        assertEquals(0.5, DisplayNumber.read(".5").getAsDouble());
        for (String text : List.of("", "-", "1.2.3", "NaN", "1e5", "one", "1 2")) {
            assertTrue(DisplayNumber.read(text).isEmpty(), text);
        }
    }

    @Test
    void showsTheFirstLinesOfAFlood() {
        PrintedOutput printed = PrintedOutput.of("line\n".repeat(100), true);
        assertEquals(30, printed.head().lines().count());
        assertEquals(70, printed.linesLeft());
        PrintedOutput oneLongLine = PrintedOutput.of("x".repeat(10_000), false);
        assertEquals(4_000, oneLongLine.head().length());
        assertEquals(1, oneLongLine.linesLeft());
        assertEquals(new PrintedOutput("a", 0, "a\n", false), PrintedOutput.of("a\n", false));
    }

    @Test
    void typeGrowsToTwiceItsSizeAndNoFurther() {
        PreferencesModel size = new PreferencesModel(Preferences.usual());
        for (int i = 0; i < 30; i++) {
            size.largerType();
        }
        assertEquals(200, size.typePercent());
        size.usualType();
        size.smallerType();
        assertEquals(100, size.typePercent());
    }
}
