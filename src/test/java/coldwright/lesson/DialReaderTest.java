package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import java.util.List;

class DialReaderTest {
    private static List<Dial> read(String code) {
        FaultList faults = new FaultList("a.md");
        List<Dial> dials = DialReader.read(code, i -> 1 + i, faults);
        assertEquals(List.of(), faults.inOrder());
        return dials;
    }

    private static String literal(String code) {
        Dial dial = read(code).get(0);
        return code.substring(dial.start(), dial.end()) + " = " + dial.value();
    }

    @Test
    void findsTheNumberItself() {
        assertEquals("120 = 120.0", literal("double a = 120; // dial 0 to 300 step 5 g"));
        assertEquals("-18.5 = -18.5", literal("double a=-18.5;// dial −30 to 0 step 0.5 °C"));
        assertEquals("1_000 = 1000.0", literal("int a = 1_000 ; // dial 0 to 3000 step 500"));
        assertEquals("2.5e2d = 250.0", literal("  double a = 2.5e2d; // dial 0 to 300 step 5"));
        assertEquals(".5 = 0.5", literal("final double a = .5; // dial 0 to 1 step .1"));
        assertEquals("3 = 3.0", literal("int b;\ndouble zuckerÄ = 3; // dial 0 to 9 step 1"));
    }

    /** Java reads 012 as ten; 012.5 and 0 are what they look like. */
    @Test
    void anOctalNumberHasNoDial() {
        String octal = "double a = 012; // dial 0 to 300 step 5 g";
        FaultList faults = new FaultList("a.md");
        assertEquals(List.of(), DialReader.read(octal, i -> 1 + i, faults));
        assertEquals(
                "the dial of `a` starts from `012`; give it one plain number, such as 120",
                faults.inOrder().get(0).words());
        assertEquals("012.5 = 12.5", literal("double a = 012.5; // dial 0 to 300 step .5 g"));
        assertEquals("0 = 0.0", literal("int a = 0; // dial 0 to 300 step 5 g"));
    }

    @Test
    void keepsTheUnitAsWritten() {
        assertEquals("", read("int a = 1; // dial 0 to 3 step 1").get(0).unit());
        assertEquals("g", read("int a = 1; // dial 0 to 3 step 1g").get(0).unit());
        assertEquals("% by mass", read("int a = 1; // dial 0 to 3 step 1 % by mass").get(0).unit());
    }

    @Test
    void whatStandsInAStringOrALongCommentIsNoDial() {
        assertEquals(List.of(), read("String a = \"double b = 1; // dial 0 to 3 step 1\";"));
        assertEquals(List.of(), read("/* double b = 1; // dial 0 to 3 step 1 */"));
        assertEquals(
                List.of(), read("String a = \"\"\"\n  int b = 1; // dial 0 to 3 step 1\n\"\"\";"));
        assertEquals(1, read("char q = '\"';\nint b = 1; // dial 0 to 3 step 1").size());
        assertEquals(1, read("String q = \"\\\"\";\nint b = 1; // dial 0 to 3 step 1").size());
    }

    @Test
    void plainRemarksAreNoDials() {
        assertEquals(
                List.of(), read("// dial the sugar down\n// to be done\nint a = 1; // a count"));
    }

    @Test
    void severalDialsKeepTheirPlaces() {
        String code = "int a = 1; // dial 0 to 3 step 1\n\nint b = 2; // dial 0 to 3 step 1\n";
        List<Dial> dials = read(code);
        assertEquals("a", dials.get(0).variable());
        assertEquals("b", dials.get(1).variable());
        assertEquals("2", code.substring(dials.get(1).start(), dials.get(1).end()));
    }
}
