package coldwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WrittenTest {
    @Test
    void aResultKeepsItsDigitsAndGetsATrueMinusIfItIsANumber() {
        assertEquals("−0.678408", Written.result("-0.678408", "Double"));
        assertEquals("−4.2e-7", Written.result("-4.2e-7", "double"));
        assertEquals("12", Written.result("12", "int"));
        assertEquals("-3", Written.result("-3", "String"));
        assertEquals("[-3, 2]", Written.result("[-3, 2]", "List"));
    }

    @Test
    void aRemarkBecomesASentence() {
        assertEquals("Another one keeps it.", Written.sentence("another one keeps it"));
        assertEquals("Why?", Written.sentence("why?"));
    }
}
