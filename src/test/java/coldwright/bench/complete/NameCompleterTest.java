package coldwright.bench.complete;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.compile.StepCompiler;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.concurrent.CancellationException;

/** Which names may stand at a caret, and of what. */
final class NameCompleterTest {
    private static final List<String> ABOVE =
            List.of(
                    """
                    record Tub(String name, double massG) {
                        double iceAt(double temperatureC) { return -temperatureC; }
                        Tub with(double moreG) { return new Tub(name, massG + moreG); }
                    }
                    """,
                    """
                    enum Stage { SOFT, HARD }
                    Tub tub = new Tub("malt", 500);
                    List<Tub> tubs = List.of(tub);
                    Tub[] row = {tub};
                    double sugarG = 120;
                    Tub doubled(Tub one) { return one.with(one.massG()); }
                    """);

    private static NameCompleter nameCompleter;

    @BeforeAll
    static void prepare() {
        nameCompleter =
                new NameCompleter(
                        () ->
                                new StepCompiler(
                                        List.of(),
                                        List.of(
                                                "import java.util.*;",
                                                "import static java.lang.Math.*;")));
    }

    @AfterAll
    static void close() {
        nameCompleter.close();
    }

    private static List<CompletionProposal> at(List<String> above, String marked) {
        return nameCompleter.complete(
                above, marked.replace("|", ""), marked.indexOf('|'), () -> false);
    }

    private static List<CompletionProposal> at(String marked) {
        return at(ABOVE, marked);
    }

    /** The snippet up to the caret, what is proposed, and of which type it is a part. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '^',
            value = {
                "^tub.|^ ; [iceAt(, massG(), name(), with(] ; Tub",
                "^tub.i|^ ; [iceAt(] ; Tub",
                "^tub\n  .i|^ ; [iceAt(] ; Tub",
                "^double q = tub.i|^ ; [iceAt(] ; Tub",
                "^tub.with(3).ma|^ ; [massG()] ; Tub",
                "^doubled(tub).ma|^ ; [massG()] ; Tub",
                "^new Tub(\"a\", 1).ma|^ ; [massG()] ; Tub",
                "^row[0].ma|^ ; [massG()] ; Tub",
                "^(tub).ma|^ ; [massG()] ; Tub",
                "^\"a(b\".len|^ ; [length()] ; String",
                "^tubs.forEach(one -> one.ma|^ ; [massG()] ; Tub",
                "^tubs.forEach(one -> { var two = one; two.ma|^ ; [massG()] ; Tub",
                "^tubs.stream().map(Tub::ma|^ ; [massG] ; Tub",
                "^tubs.forEach(one -> doubled(one.ma|^ ; [massG()] ; Tub",
                "^tubs.forEach(one -> max(1, max(2, one.ma|^ ; [massG()] ; Tub",
                "^tubs.forEach(one -> { var two = one; print(max(1, two.ma|^ ; [massG()] ; Tub",
                "^Stage.|^ ; [HARD, SOFT, values()] ; Stage",
                "^Stage.HARD.na|^ ; [name()] ; Stage",
                "^var near = tub;\nnear.ma|^ ; [massG()] ; Tub",
                "^var near = tub; // a.b;\n\nnear.ma|^ ; [massG()] ; Tub",
                "^double wrong = \"text\";\ntub.ma|^ ; [massG()] ; Tub",
                "^double f(Tub other, double x) {\n  var y = other;\n  return y.ma|^ ; [massG()] ; Tub",
                "^for (Tub each : tubs) {\n  each.ma|^ ; [massG()] ; Tub",
                "^for (var each : row) {\n  each.ma|^ ; [massG()] ; Tub",
                "^if (tub.ma|^ ; [massG()] ; Tub",
                "^if (sugarG > 3) { } else { tub.ma|^ ; [massG()] ; Tub",
            })
    void membersAreThoseOfTheReceiver(String marked, String inserts, String receiver) {
        List<CompletionProposal> found = at(marked);
        assertEquals(
                inserts,
                found.stream().map(CompletionProposal::insert).sorted().toList().toString());
        for (CompletionProposal one : found) {
            assertTrue(one.receiver().endsWith(receiver), "%s is of %s".formatted(one, receiver));
            assertFalse(one.own());
        }
    }

    /** The snippet up to the caret, and the learner's own names that are proposed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '^',
            value = {
                "^tu|^ ; [tub, tubs]",
                "^double y = su|^ ; [sugarG]",
                "^do|^ ; [doubled]",
                "^new T|^ ; [Tub]",
                "^double here = 1;\nhe|^ ; [here]",
                "^for (int turn = 0; turn < 3; turn++) {\n  double zeal = tu|^ ; [tub, tubs, turn]",
                "^double f(double percent) { return 100 - per|^ ; [percent]",
                "^double g() { return sq|^ ; []",
                "^tubs.forEach(onlyHere -> doubled(only|^ ; [onlyHere]",
                "^// tu|^ ; []",
                "^/* tu|^ ; []",
                "^String s = \"tu|^ ; []",
            })
    void ownNamesAreMarked(String marked, String names) {
        assertEquals(
                names,
                at(marked).stream()
                        .filter(CompletionProposal::own)
                        .map(CompletionProposal::name)
                        .sorted()
                        .toList()
                        .toString());
    }

    @Test
    void aNameSaysWhereItBegins() {
        String marked = "double here = 1;\nvar x = her|;\nvar hers = 2;";
        assertEquals(
                List.of(
                        new CompletionProposal(
                                "here", "here", marked.indexOf("her|"), "", true, true)),
                at(marked));
    }

    @Test
    void whatFitsIsMarked() {
        List<CompletionProposal> found = at("double x = tub.|");
        assertEquals(
                List.of("iceAt", "massG"),
                found.stream()
                        .filter(CompletionProposal::fits)
                        .map(CompletionProposal::name)
                        .sorted()
                        .toList());
    }

    @Test
    void whatStandsBelowTheCaretIsNotKnownYet() {
        assertEquals(List.of(), at("lat|\ndouble later = 1;"));
        at("double later = 1;\nlat|");
        assertEquals(List.of(), at("lat|\ndouble later = 1;"));
    }

    @Test
    void nothingIsProposedBelowWhatDoesNotCompile() {
        assertEquals(List.of(), at(List.of("double a = ;"), "double here = 1; he|"));
        assertEquals(List.of(), at(List.of("double a = ;"), "double here = 1; her|"));
        assertEquals(1, at(List.of("double a = 1;"), "double here = 1; he|").size());
    }

    @Test
    void givesUpWhenAsked() {
        assertThrows(
                CancellationException.class,
                () -> nameCompleter.complete(List.of("double fresh = 5;"), "fr", 2, () -> true));
        assertEquals(1, at(List.of("double fresh = 5;"), "fre|").size());
    }
}
