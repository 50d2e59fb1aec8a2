package coldwright.bench.compile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences for a call whose values do not suit. */
final class CallWords {
    private static final Pattern REQUIRED = Pattern.compile("required:\\s*(.+)");
    private static final Pattern FOUND = Pattern.compile("found:\\s*(.+)");
    private static final Pattern FOUND_FOR =
            Pattern.compile("no suitable \\w+ found for [\\w$]+\\((.*)\\)");
    private static final Pattern CANDIDATE =
            Pattern.compile("(?:method|constructor) \\S*?\\((\\S*)\\) is not applicable");
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("(?<![\\w.,])(\\d+,\\d+)(?![\\w.]|,\\d)");
    private static final Pattern TWO_VALUES =
            Pattern.compile("\\A\\s*([^,()]+),\\s*(-?\\d[\\d.]*)\\s*\\)");
    private static final Pattern CALLED = Pattern.compile("([\\p{L}_$][\\w$]*)\\s*\\(\\s*$");
    private static final Set<String> NUMBERS = Set.of("double", "int", "long", "float");
    private static final int MOST_WAYS = 3;
    private static final Set<String> CODES = Set.of("cant.apply.symbol", "cant.apply.symbols");

    private CallWords() {}

    static Optional<Complaint> of(Said said) {
        if (CODES.contains(said.code())) {
            return Optional.of(
                    decimalComma(said)
                            .orElseGet(
                                    () ->
                                            said.complaint(
                                                    said.code().equals("cant.apply.symbol")
                                                            ? oneWay(said)
                                                            : severalWays(said))));
        }
        return swapped(said);
    }

    /** A comma in a number makes two values of one. */
    private static Optional<Complaint> decimalComma(Said said) {
        String statement = Masked.of(said.statement());
        int from = said.end() - said.statementStart();
        Matcher comma = DECIMAL_COMMA.matcher(statement);
        return comma.find(Math.min(from, statement.length()))
                ? Optional.of(
                        said.complaint(
                                SlipWords.decimalPoint(comma.group(1)),
                                comma.start(1),
                                comma.end(1)))
                : Optional.empty();
    }

    /** A thing where a number should stand, and the number after it. */
    private static Optional<Complaint> swapped(Said said) {
        Matcher called = CALLED.matcher(said.before());
        String rest = said.text().substring(said.start());
        Matcher values = TWO_VALUES.matcher(rest);
        boolean needsNumber =
                NUMBERS.stream()
                        .anyMatch(
                                type ->
                                        said.firstLine()
                                                .endsWith("cannot be converted to " + type));
        if (!needsNumber || !called.find() || !values.find()) {
            return Optional.empty();
        }
        return Optional.of(
                said.complaint(
                        "`%s` takes these two in the other order: `%s(%s, %s)`"
                                .formatted(
                                        called.group(1),
                                        called.group(1),
                                        values.group(2),
                                        values.group(1).strip())));
    }

    private static String oneWay(Said said) {
        String required = said.inMessage(REQUIRED, 1);
        String found = said.inMessage(FOUND, 1);
        if (said.message().contains("varargs mismatch")) {
            return "`%s` takes as many %s as you like, but not %s"
                    .formatted(
                            said.lastName(),
                            MeaningWords.simple(required).replace("[]", ""),
                            values(found));
        }
        if (found.equals("no arguments")) {
            return "`%s` takes %s, but nothing stands between its brackets"
                    .formatted(said.lastName(), values(required));
        }
        return "`%s` takes %s, not %s".formatted(said.lastName(), values(required), values(found));
    }

    private static String severalWays(Said said) {
        Set<String> ways = new LinkedHashSet<>();
        Matcher candidate = CANDIDATE.matcher(said.message());
        while (candidate.find()) {
            ways.add("(" + types(candidate.group(1)) + ")");
        }
        String found = said.inMessage(FOUND_FOR, 1);
        if (ways.isEmpty() || ways.size() > MOST_WAYS || found.isEmpty()) {
            return "`%s` can't be called with these values; check how many there are and of what kind"
                    .formatted(said.lastName());
        }
        return "`%s` takes %s, not (%s)"
                .formatted(said.lastName(), String.join(" or ", ways), types(found));
    }

    private static String types(String list) {
        if (list.equals("no arguments")) {
            return "";
        }
        List<String> types = new ArrayList<>();
        for (String one : list.split(",(?![^<]*>)")) {
            types.add(MeaningWords.simple(one.strip()).replace("...", "…"));
        }
        return String.join(", ", types);
    }

    private static String values(String list) {
        if (list.isEmpty() || list.equals("no arguments")) {
            return "nothing between its brackets";
        }
        int count = list.split(",(?![^<]*>)").length;
        return "%d %s (%s)".formatted(count, count == 1 ? "value" : "values", types(list));
    }
}
