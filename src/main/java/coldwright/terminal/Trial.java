package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Run;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Several claims tried in one snippet, for the compiler takes nearly as long over one line as over
 * twenty. Whatever does not plainly hold there is tried once more by itself, so that its words are
 * those of a run of its own.
 */
final class Trial {
    private static final String MARK = "\u0001";
    private static final char PART = '\u0002';

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

    /** What each gave; fewer than asked for, or none, if they can't be told apart. */
    private static List<Outcome> together(List<Claim> claims, List<String> above, Runs runs) {
        String snippet = snippetFor(claims.stream().map(Claim::expression).toList());
        Run run = runs.run(above, snippet);
        List<Outcome> given =
                run.printed()
                        .lines()
                        .filter(line -> line.startsWith(MARK))
                        .map(Trial::read)
                        .toList();
        if (!run.outcome().finished() || given.size() != claims.size()) {
            return List.of();
        }
        above.add(snippet);
        return given;
    }

    private static Outcome read(String line) {
        int part = line.indexOf(PART);
        String value = line.substring(part + 1);
        return part < 0
                ? new Outcome.Finished("", "")
                : new Outcome.Finished(value, line.substring(MARK.length(), part));
    }

    /**
     * Java that prints, a line for each expression, the type and value of what it gives. It uses
     * nothing that might leave traces in the bench's process, which would cost a new one.
     */
    private static String snippetFor(List<String> expressions) {
        return expressions.stream().map(Trial::told).collect(Collectors.joining("", "{\n", "}"));
    }

    private static String told(String expression) {
        return """
                try {
                    Object given_ = (%s
                    );
                    System.out.println("\\n\\u0001"
                            + (given_ == null ? "" : given_.getClass().getSimpleName())
                            + "\\u0002" + String.valueOf(given_).replace('\\n', ' '));
                } catch (Exception failed_) {
                    System.out.println("\\n\\u0001");
                }
                """
                .replace("%s", expression);
    }
}
