package coldwright.bench.compile;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences for text that is not Java yet. */
final class SyntaxWords {
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("(?<![\\w(,.])(\\d+),(\\d+)(?![\\w.)])");
    private static final Pattern NUMBER_WITH_UNIT =
            Pattern.compile("(?<![\\w.])(\\d+(?:\\.\\d+)?)\\s*([\\p{L}%°]+)");
    private static final Pattern ODD_NAME =
            Pattern.compile("\\b(?:double|int|var|String)\\s+(\\d\\w*|%)");
    private static final Pattern EXPECTED = Pattern.compile("^(.+) expected");
    private static final Map<String, String> ODD_SIGNS =
            Map.ofEntries(
                    Map.entry("×", "multiply with `*`"),
                    Map.entry("·", "multiply with `*`"),
                    Map.entry("÷", "divide with `/`"),
                    Map.entry("−", "write the minus of the keyboard, `-`"),
                    Map.entry("–", "write the minus of the keyboard, `-`"),
                    Map.entry("“", "put text between straight quotes, `\"`"),
                    Map.entry("”", "put text between straight quotes, `\"`"),
                    Map.entry("„", "put text between straight quotes, `\"`"),
                    Map.entry("’", "put text between straight quotes, `\"`"),
                    Map.entry("°", "leave the unit away"),
                    Map.entry("²", "multiply the value with itself"),
                    Map.entry("#", "begin a remark with `//`"));
    private static final Set<String> EXPECTED_TOO = Set.of("illegal.start.of.type", "dot.class");
    private static final Map<Character, Character> PAIRS = Map.of('(', ')', '[', ']', '{', '}');

    private SyntaxWords() {}

    static Optional<Complaint> of(Said said) {
        return said.code().contains("expected") || EXPECTED_TOO.contains(said.code())
                ? Optional.of(expected(said))
                : words(said).map(said::complaint);
    }

    private static Optional<String> words(Said said) {
        switch (said.code()) {
            case "premature.eof":
                return Optional.of(tooEarly(said));
            case "illegal.start.of.expr":
            case "illegal.start.of.stmt":
                return Optional.of(missing(said));
            case "unclosed.str.lit":
                return Optional.of("this text has no end; close it with `\"` on the same line");
            case "unclosed.char.lit":
            case "empty.char.lit":
                return Optional.of(
                        "single quotes hold one character; put text between double quotes: `\"…\"`");
            case "unclosed.comment":
                return Optional.of("this remark has no end; close it with `*/`");
            case "illegal.char":
                return Optional.of(oddSign(said));
            case "int.number.too.large":
                return Optional.of(
                        "%s is too large for a whole number; write it with a point: `%s.0`"
                                .formatted(digitsAt(said), digitsAt(said)));
            case "not.stmt":
                return Optional.of(
                        "`%s` alone does nothing; give it a name, or call something with it"
                                .formatted(said.source()));
            case "else.without.if":
                return Optional.of("this `else` has no `if` before it");
            case "orphaned":
                return Optional.of(
                        "this `%s` stands outside of a `switch`".formatted(said.source()));
            default:
                return Optional.empty();
        }
    }

    private static Complaint expected(Said said) {
        String statement = said.statement();
        Matcher comma = DECIMAL_COMMA.matcher(statement);
        if (comma.find()) {
            return said.complaint(
                    "a decimal number is written with a point: `%s.%s`, not `%s`"
                            .formatted(comma.group(1), comma.group(2), comma.group()),
                    comma.start(),
                    comma.end());
        }
        Matcher odd = ODD_NAME.matcher(statement);
        if (odd.find()) {
            return said.complaint(
                    "`%s` can't be a name; a name begins with a letter".formatted(odd.group(1)),
                    odd.start(1),
                    odd.end(1));
        }
        Matcher unit = NUMBER_WITH_UNIT.matcher(statement);
        if (unit.find() && !unit.group(2).matches("[dDfFlLxXeE].*")) {
            return said.complaint(
                    "`%s` is not a number; leave the unit away, or put it into the name"
                            .formatted(unit.group()),
                    unit.start(),
                    unit.end());
        }
        return said.complaint(missingSign(said));
    }

    private static String missingSign(Said said) {
        String sign = said.inMessage(EXPECTED, 1);
        String after = said.wordBefore(said.at());
        if (sign.equals("';'")) {
            return "a semicolon is missing after `%s`".formatted(after);
        }
        if (sign.equals("<identifier>")) {
            return "a name is missing after `%s`".formatted(after);
        }
        if (sign.startsWith("class, interface")) {
            return "there is a `}` too many";
        }
        if (sign.isEmpty()) {
            return missing(said);
        }
        return "%s is missing after `%s`".formatted(sign.replace('\'', '`'), after);
    }

    private static String tooEarly(Said said) {
        Deque<Integer> open = new ArrayDeque<>();
        String text = Masked.of(said.text());
        for (int i = said.statementStart(); i < text.length(); i++) {
            char sign = text.charAt(i);
            if (PAIRS.containsKey(sign)) {
                open.push(i);
            } else if (PAIRS.containsValue(sign) && !open.isEmpty()) {
                open.pop();
            }
        }
        if (!open.isEmpty()) {
            int place = open.pop();
            char sign = said.text().charAt(place);
            return "a `%s` is missing: the `%s` in line %d is never closed"
                    .formatted(PAIRS.get(sign), sign, Lines.lineAt(said.text(), place));
        }
        if (said.statement().strip().startsWith("else")) {
            return "this `else` has no `if` before it";
        }
        if (said.text().indexOf('}', said.statementStart()) >= 0) {
            return "there is a `}` too many";
        }
        return "the snippet ends too early after `%s`"
                .formatted(said.wordBefore(said.text().length()));
    }

    private static String missing(Said said) {
        String source = said.source().strip();
        if (source.startsWith("}")) {
            return "there is a `}` too many";
        }
        if (source.isEmpty() || said.at() >= said.text().stripTrailing().length()) {
            return "something is missing after `%s`".formatted(said.wordBefore(said.at()));
        }
        return "something is missing before `%s`".formatted(source);
    }

    private static String oddSign(Said said) {
        String sign =
                said.text().substring(said.at(), Math.min(said.text().length(), said.at() + 1));
        String mend = ODD_SIGNS.getOrDefault(sign, "leave it away or write it in a text");
        return "`%s` is no sign of Java; %s".formatted(sign, mend);
    }

    private static String digitsAt(Said said) {
        Matcher digits = Pattern.compile("\\d[\\d_]*").matcher(said.text());
        return digits.find(said.at()) ? digits.group() : said.source();
    }
}
