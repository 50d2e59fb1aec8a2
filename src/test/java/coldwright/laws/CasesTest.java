package coldwright.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Laws that don't hold fail, and say how to see it again. */
class CasesTest {
    /** A law that numbers above 90 break. */
    private static final Consumer<Draw> BROKEN =
            draw -> assertTrue(draw.doubleIn(0, 100) <= 90, "too much");

    private static int casesSeen;

    @Test
    void aFailureNamesItsSeedAndWhatWasDrawnAndTheSeedGivesItAgain() {
        String first = failure(1000, 5);
        String seed = first.replaceAll("(?s).*-Dlaws.seed=(\\d+).*", "$1");
        String drawn = first.lines().toList().get(1);
        assertTrue(drawn.matches("drawn: \\[(9\\d\\.\\d+|100.0)\\]"), first);
        assertTrue(first.contains("too much"), first);
        List<String> again = failure(1000, Long.parseLong(seed)).lines().toList();
        assertEquals("case 1 of 1000 fails; run it first with -Dlaws.seed=" + seed, again.get(0));
        assertEquals(drawn, again.get(1));
    }

    private static String failure(int cases, long seed) {
        return assertThrows(AssertionError.class, () -> CaseRunner.run(cases, seed, BROKEN))
                .getMessage();
    }

    @Test
    void allCasesRunAndTheyDiffer() {
        List<Double> seen = new ArrayList<>();
        CaseRunner.run(500, 1, draw -> seen.add(draw.doubleIn(-3, 7)));
        assertEquals(500, seen.size());
        assertTrue(seen.stream().distinct().count() > 400);
        for (double edge : new double[] {-3, 7, 0, 1, -1, 0.01, -0.01}) {
            assertTrue(seen.contains(edge), "never " + edge);
        }
        assertTrue(seen.stream().allMatch(x -> x >= -3 && x <= 7));
        assertEquals(2, seen.stream().mapToDouble(x -> x).average().orElseThrow(), 0.5);
    }

    @Cases(30)
    void theNumberOfCasesIsThatOfTheLaw(Draw draw) {
        casesSeen++;
        assertTrue(draw.intIn(1, 6) >= 1);
    }

    @AfterAll
    static void asMany() {
        int wanted = 30 * Integer.getInteger("laws.cases", 1);
        assertTrue(casesSeen == 0 || casesSeen == wanted, casesSeen + " cases");
    }

    @Test
    void listsAndTextsAreEmptyShortAndFull() {
        List<Integer> lists = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        CaseRunner.run(
                2000,
                1,
                draw -> {
                    lists.add(draw.listOf(1, 9, Draw::anyBoolean).size());
                    texts.add(draw.brokenText(9));
                });
        assertEquals(
                List.of(1, 2, 3, 4, 5, 6, 7, 8, 9), lists.stream().distinct().sorted().toList());
        assertTrue(texts.contains(""));
        assertTrue(texts.stream().anyMatch(text -> text.length() == 9));
        assertTrue(texts.stream().allMatch(text -> text.length() <= 9));
        for (int character : new int[] {0, '\n', 0x2028, 0x1F366}) {
            assertTrue(
                    texts.stream().anyMatch(text -> text.indexOf(character) >= 0),
                    "never " + character);
        }
    }

    @Test
    void wholeTextsHaveNoHalvesOfPairsAndBrokenOnesDo() {
        boolean[] broken = new boolean[1];
        CaseRunner.run(
                2000,
                1,
                draw -> {
                    assertEquals(0, halves(draw.text(30)));
                    broken[0] |= halves(draw.brokenText(30)) > 0;
                });
        assertTrue(broken[0]);
    }

    private static long halves(String text) {
        return text.codePoints()
                .filter(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)
                .count();
    }
}
