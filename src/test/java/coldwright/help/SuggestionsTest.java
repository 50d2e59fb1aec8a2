package coldwright.help;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.bench.complete.CompletionProposal;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class SuggestionsTest {
    private static final HelpIndex INDEX =
            HelpIndex.read(
                    """
                    icePercentAt\tCurve\tmethod\ticePercentAt(temperatureC in °C) → %\tdouble\tIce.\t\t%\t
                    massG\tCurve\tmethod\tmassG() → g\tdouble\tThe whole.\t\tg\t
                    massG\tCurve\tmethod\tmassG(ingredient) → g\tdouble\tOf one.\t\tg\t
                    notes\tCurve\tmethod\tnotes() → List<String>\tList<String>\tNotes.\t\t\t
                    Stage\t\tenum\tStage: SOFT, HARD\tStage\tHow hard.\t\t\tbare
                    sqrt\tMath\tjava\tsqrt(value) → number\t\tThe square root.\t\t\tbare
                    """);

    private static CompletionProposal after(String insert, boolean fits) {
        return new CompletionProposal(
                insert.replaceAll("\\(.*", ""), insert, 6, "x.Curve", fits, false);
    }

    private static CompletionProposal alone(String insert, boolean own) {
        return new CompletionProposal(insert.replaceAll("\\(.*", ""), insert, 0, "", false, own);
    }

    @Test
    void membersThatFitComeFirstEachWithItsHelp() {
        List<Suggestion> list =
                Suggestions.of(
                        List.of(
                                after("notes()", false),
                                after("zeal()", true),
                                after("massG()", true),
                                after("massG(", true),
                                after("icePercentAt(", true)),
                        INDEX);
        assertEquals(
                List.of(
                        "icePercentAt(temperatureC in °C) → %",
                        "massG() → g", "notes() → List<String>", "zeal()"),
                list.stream().map(Suggestion::label).toList());
        assertEquals(
                List.of("Ice.", "The whole. (2 ways to write it)", "Notes.", ""),
                list.stream().map(Suggestion::help).toList());
        assertEquals("icePercentAt(", list.get(0).insert());
        assertEquals(6, list.get(0).from());
        assertEquals(Optional.empty(), list.get(3).entry());
    }

    @Test
    void ownNamesComeBeforeTheTradesAndThoseBeforeJavas() {
        List<Suggestion> list =
                Suggestions.of(
                        List.of(
                                alone("Scanner", false),
                                alone("sqrt(", false),
                                alone("Stage", false),
                                alone("syrup(", true),
                                alone("Stack", false),
                                alone("StackOverflowError", false),
                                alone("ExhibitCodec", false)),
                        INDEX);
        assertEquals(
                List.of("syrup(…)", "Stage", "sqrt(value) → number", "Scanner", "Stack"),
                list.stream().map(Suggestion::label).toList());
    }

    @Test
    void anOwnNameIsNotMistakenForTheTrades() {
        Suggestion one = Suggestions.of(List.of(alone("Stage", true)), INDEX).get(0);
        assertEquals(Optional.empty(), one.entry());
        assertEquals("declared in a snippet", one.help());
    }
}
