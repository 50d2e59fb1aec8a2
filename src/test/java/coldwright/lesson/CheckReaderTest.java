package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import java.util.List;

class CheckReaderTest {
    private static CheckExpectation read(String line) {
        FaultList faults = new FaultList("a.md");
        List<CheckExpectation> read = CheckReader.read(line, i -> 7 + i, faults);
        assertEquals(List.of(), faults.inOrder());
        return read.get(0);
    }

    @Test
    void takesEitherMinus() {
        CheckExpectation expected =
                new CheckExpectation.Value(7, "freezing(20)", -1.47, 0.03, "a table");
        assertEquals(expected, read("freezing(20) is -1.47 within 0.03 -- a table"));
        assertEquals(expected, read("freezing(20)  is  −1.47  within  0.03  --  a table "));
    }

    @Test
    void theLastIsDecides() {
        assertEquals(
                new CheckExpectation.True(7, "x is y", "words"), read("x is y is true -- words"));
        assertEquals(
                new CheckExpectation.True(7, "name.equals(\"what is true\")", ""),
                read("name.equals(\"what is true\") is true"));
    }

    @Test
    void marksWithinAStringAreNoMarks() {
        assertEquals(
                new CheckExpectation.True(7, "text.contains(\" -- \")", "a source -- and another"),
                read("text.contains(\" -- \") is true -- a source -- and another"));
        assertEquals(
                new CheckExpectation.Value(7, "text.indexOf(\"\\\" is 3\")", 2, 0, ""),
                read("text.indexOf(\"\\\" is 3\") is 2 within 0"));
    }

    @Test
    void anApostropheInTheSourceIsNoLiteral() {
        assertEquals(
                new CheckExpectation.True(7, "a > 3", "the cook's book -- page 'four"),
                read("a > 3 is true -- the cook's book -- page 'four"));
    }

    @Test
    void numbersMayHavePowersOfTen() {
        assertEquals(
                new CheckExpectation.Value(7, "a", 1.5e-7, 1e-9, ""),
                read("a is 1.5e-7 within 1e-9"));
    }
}
