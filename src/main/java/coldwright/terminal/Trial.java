package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.Together;

import java.util.ArrayList;
import java.util.List;

/**
 * Several claims tried together. Whatever does not plainly hold there is tried once more by itself,
 * so that its words are those of a run of its own.
 */
final class Trial {
    private Trial() {}

    /**
     * Tries claims after the snippets above.
     *
     * @param claims what is said, in order
     * @param above the snippets above; what ran to its end is put behind them
     * @param runs runs them
     * @return a verdict for each claim, in order
     */
    static List<Verdict> of(List<Claim> claims, List<String> above, Runs runs) {
        List<Outcome> together = claims.size() > 1 ? together(claims, above, runs) : List.of();
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < claims.size(); i++) {
            Claim claim = claims.get(i);
            boolean holds = i < together.size() && claim.judge().apply(together.get(i)).held();
            Outcome outcome = holds ? together.get(i) : alone(claim, above, runs);
            verdicts.add(claim.judge().apply(outcome));
        }
        return verdicts;
    }

    private static Outcome alone(Claim claim, List<String> above, Runs runs) {
        Outcome outcome = runs.run(above, claim.expression()).outcome();
        if (outcome.finished()) {
            above.add(claim.expression());
        }
        return outcome;
    }

    /** What each gave; none, if they can't be told apart. */
    private static List<Outcome> together(List<Claim> claims, List<String> above, Runs runs) {
        String snippet = Together.snippet(claims.stream().map(Claim::expression).toList());
        Run run = runs.run(above, snippet);
        List<Together.Given> given = Together.read(run.printed());
        if (!run.outcome().finished() || given.size() != claims.size()) {
            return List.of();
        }
        above.add(snippet);
        return given.stream().map(Trial::outcome).toList();
    }

    private static Outcome outcome(Together.Given given) {
        return given.threw()
                ? new Outcome.Finished("", "")
                : new Outcome.Finished(given.text(), given.type());
    }
}
