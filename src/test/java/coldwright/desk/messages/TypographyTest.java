package coldwright.desk.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TypographyTest {
    private final Typography typography = new Typography();

    @Test
    void curlsQuotationMarks() {
        assertEquals(
                "with little sugar, “to keep it light”. Don’t (“so”).",
                set("with little sugar, \"to keep it light\". Don't (\"so\")."));
    }

    @Test
    void curlsAcrossPieces() {
        typography.begin();
        assertEquals("a “", typography.set("a \""));
        typography.pass("Mix");
        assertEquals("” b", typography.set("\" b"));
    }

    @Test
    void keepsNumbersOnALineWithTheirUnits() {
        assertEquals("at −18\u00A0°C, 70\u00A0% and 20\u00A0g", set("at −18 °C, 70 % and 20 g"));
        assertEquals("3 grapes, 2 lemons", set("3 grapes, 2 lemons"));
    }

    private String set(String text) {
        typography.begin();
        return typography.set(text);
    }
}
