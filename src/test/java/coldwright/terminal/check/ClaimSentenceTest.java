package coldwright.terminal.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.lesson.CheckExpectation;
import coldwright.play.ClaimVerdict;
import coldwright.terminal.console.RunFailureText;

import org.junit.jupiter.api.Test;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

class ClaimSentenceTest {
    private static final CheckExpectation NUMBER =
            new CheckExpectation.Value(3, "a", -1.5, 0.25, "");
    private static final CheckExpectation TRUTH = new CheckExpectation.True(3, "a > b", "");
    private static final SnippetProblem PROBLEM = new SnippetProblem(0, 1, 2, "it is wrong", "");

    private static ClaimVerdict of(CheckExpectation line, String value, String type, String exact) {
        return ClaimVerdict.of(line, new RunOutcome.Finished(value, type, exact));
    }

    @Test
    void theToleranceItselfStillHolds() {
        assertTrue(of(NUMBER, "-1.75", "double", "-1.75").passed());
        assertTrue(of(NUMBER, "-1.25", "double", "-1.25").passed());
        assertFalse(of(NUMBER, "-1.2", "double", "-1.2499999999").passed());
        assertTrue(of(NUMBER, "-1", "int", "-1.5").passed());
        assertFalse(of(NUMBER, "not a number", "double", "NaN").passed());
        assertFalse(of(NUMBER, "infinite", "double", "Infinity").passed());
    }

    @Test
    void saysWhatWasExpectedAndWhatCame() {
        assertEquals(
                "a, expected −1.5 within 0.25, got 4",
                ClaimSentence.of(of(NUMBER, "4", "double", "4.0")));
        assertEquals(
                "a, expected −1.5 within 0.25, got soft, of type String",
                ClaimSentence.of(of(NUMBER, "soft", "String", "soft")));
        assertEquals("not yet: a > b", ClaimSentence.of(of(TRUTH, "false", "boolean", "false")));
        assertEquals(
                "a > b, expected true or false, got 3, of type int",
                ClaimSentence.of(of(TRUTH, "3", "int", "3")));
        assertEquals(
                "a > b, expected true or false, got nothing",
                ClaimSentence.of(of(TRUTH, "", "", "")));
    }

    @Test
    void aTextThatReadsTrueIsNotTrue() {
        assertFalse(of(TRUTH, "true", "String", "true").passed());
        assertTrue(of(TRUTH, "true", "Boolean", "true").passed());
        assertFalse(of(NUMBER, "-1.5", "String", "-1.5").passed());
    }

    private static List<RunOutcome> oneOfEach() {
        return List.of(
                new RunOutcome.Finished("1", "int"),
                new RunOutcome.Rejected(List.of(PROBLEM, PROBLEM)),
                new RunOutcome.Threw(PROBLEM),
                new RunOutcome.Stopped(),
                new RunOutcome.Died("it ran out of memory"),
                new RunOutcome.AboveFailed(0, new RunOutcome.Threw(PROBLEM)));
    }

    @Test
    void everyOutcomeHasItsWords() {
        assertEquals(
                Arrays.stream(RunOutcome.class.getPermittedSubclasses())
                        .collect(Collectors.toSet()),
                oneOfEach().stream().map(Object::getClass).collect(Collectors.toSet()));
        assertEquals(
                List.of(
                        "",
                        "2 it is wrong, 2 it is wrong",
                        "2 it is wrong",
                        "0 the snippet was stopped",
                        "0 it ran out of memory",
                        "0 a snippet above failed: it is wrong"),
                oneOfEach().stream().map(ClaimSentenceTest::words).toList());
    }

    private static String words(RunOutcome outcome) {
        Stream<String> all =
                RunFailureText.troubles(outcome).stream()
                        .map(one -> one.line() + " " + one.words());
        return all.collect(Collectors.joining(", "));
    }
}
