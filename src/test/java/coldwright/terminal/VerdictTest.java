package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.Outcome;
import coldwright.bench.Problem;
import coldwright.lesson.Expectation;

import org.junit.jupiter.api.Test;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

class VerdictTest {
    private static final Expectation NUMBER = new Expectation.Value(3, "a", -1.5, 0.25, "");
    private static final Expectation TRUTH = new Expectation.True(3, "a > b", "");
    private static final Problem PROBLEM = new Problem(0, 1, 2, "it is wrong", "");

    private static Verdict of(Expectation line, String value, String type, String exact) {
        return Verdict.of(line, new Outcome.Finished(value, type, exact));
    }

    @Test
    void theToleranceItselfStillHolds() {
        assertTrue(of(NUMBER, "-1.75", "double", "-1.75").held());
        assertTrue(of(NUMBER, "-1.25", "double", "-1.25").held());
        assertFalse(of(NUMBER, "-1.2", "double", "-1.2499999999").held());
        assertTrue(of(NUMBER, "-1", "int", "-1.5").held());
        assertFalse(of(NUMBER, "not a number", "double", "NaN").held());
        assertFalse(of(NUMBER, "infinite", "double", "Infinity").held());
    }

    @Test
    void saysWhatWasExpectedAndWhatCame() {
        assertEquals(
                "a, expected −1.5 within 0.25, got 4", of(NUMBER, "4", "double", "4.0").sentence());
        assertEquals(
                "a, expected −1.5 within 0.25, got soft, of type String",
                of(NUMBER, "soft", "String", "soft").sentence());
        assertEquals(
                "a > b, expected true, got false",
                of(TRUTH, "false", "boolean", "false").sentence());
        assertEquals(
                "a > b, expected true, got 3, of type int", of(TRUTH, "3", "int", "3").sentence());
        assertEquals("a > b, expected true, got nothing", of(TRUTH, "", "", "").sentence());
    }

    @Test
    void aTextThatReadsTrueIsNotTrue() {
        assertFalse(of(TRUTH, "true", "String", "true").held());
        assertTrue(of(TRUTH, "true", "Boolean", "true").held());
        assertFalse(of(NUMBER, "-1.5", "String", "-1.5").held());
    }

    private static List<Outcome> oneOfEach() {
        return List.of(
                new Outcome.Finished("1", "int"),
                new Outcome.Rejected(List.of(PROBLEM, PROBLEM)),
                new Outcome.Threw(PROBLEM),
                new Outcome.Stopped(),
                new Outcome.Died("it ran out of memory"),
                new Outcome.AboveFailed(0, new Outcome.Threw(PROBLEM)));
    }

    @Test
    void everyOutcomeHasItsWords() {
        assertEquals(
                Arrays.stream(Outcome.class.getPermittedSubclasses()).collect(Collectors.toSet()),
                oneOfEach().stream().map(Object::getClass).collect(Collectors.toSet()));
        assertEquals(
                List.of(
                        "",
                        "2 it is wrong, 2 it is wrong",
                        "2 it is wrong",
                        "0 it was stopped",
                        "0 it ran out of memory",
                        "0 a snippet above did not run to its end: it is wrong"),
                oneOfEach().stream().map(VerdictTest::words).toList());
    }

    private static String words(Outcome outcome) {
        Stream<String> all =
                Ending.troubles(outcome).stream().map(one -> one.line() + " " + one.words());
        return all.collect(Collectors.joining(", "));
    }
}
