package coldwright.play;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Stands for the bench: knows the value of some expressions and how some snippets end. */
final class FakeRunner implements BlockingRunner {
    private static final Pattern TRIED =
            Pattern.compile(
                    "Object given_ = all_\\[\\d+] = \\((?:Boolean.FALSE.*\\(Object\\) \\()?(.*)\n");

    /** What was run, each with the snippets above it. */
    record Asked(List<String> above, String snippet) {}

    final List<Asked> asked = new ArrayList<>();
    private final Map<String, RunOutcome> outcomes = new HashMap<>();

    /** Says how a snippet or an expression ends; all others end well and give nothing. */
    FakeRunner ends(String snippet, RunOutcome outcome) {
        outcomes.put(snippet, outcome);
        return this;
    }

    FakeRunner gives(String expression, String value, String type) {
        return ends(expression, new RunOutcome.Finished(value, type));
    }

    List<String> snippets() {
        return asked.stream().map(Asked::snippet).toList();
    }

    @Override
    public FinishedRun run(List<String> above, String snippet) {
        asked.add(new Asked(above, snippet));
        StringBuilder printed = new StringBuilder();
        Matcher tried = TRIED.matcher(snippet);
        while (tried.find()) {
            if (outcomes.get(tried.group(1)) instanceof RunOutcome.Finished gave) {
                printed.append("\n\u0001" + gave.type() + "\u0002" + gave.value() + "\n");
            } else {
                printed.append("\n\u0001\u0003\u0002it threw\n");
            }
        }
        RunOutcome outcome = outcomes.getOrDefault(snippet, new RunOutcome.Finished("", ""));
        return new FinishedRun(outcome, printed.toString(), false, List.of(), Duration.ZERO);
    }
}
