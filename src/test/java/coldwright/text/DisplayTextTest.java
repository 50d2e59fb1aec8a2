package coldwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DisplayTextTest {
    @Test
    void aResultKeepsItsDigitsAndGetsATrueMinusIfItIsANumber() {
        assertEquals("−0.678408", DisplayText.result("-0.678408", "Double"));
        assertEquals("−4.2e-7", DisplayText.result("-4.2e-7", "double"));
        assertEquals("12", DisplayText.result("12", "int"));
        assertEquals("-3", DisplayText.result("-3", "String"));
        assertEquals("[-3, 2]", DisplayText.result("[-3, 2]", "List"));
    }

    @Test
    void aRemarkBecomesASentence() {
        assertEquals("Another one keeps it.", DisplayText.sentence("another one keeps it"));
        assertEquals("Why?", DisplayText.sentence("why?"));
    }
}
