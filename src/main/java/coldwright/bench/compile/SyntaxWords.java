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
    private static final Set<String> SHOWN_IN_THE_TEXT =
            Set.of("illegal.start.of.expr", "illegal.start.of.stmt", "not.stmt", "premature.eof");
    private static final Map<Character, Character> PAIRS = Map.of('(', ')', '[', ']', '{', '}');

    private SyntaxWords() {}

    static Optional<Complaint> of(Said said) {
        boolean expected = said.code().contains("expected") || EXPECTED_TOO.contains(said.code());
        if (expected || SHOWN_IN_THE_TEXT.contains(said.code())) {
            Optional<Complaint> slip = SlipWords.of(said);
            if (slip.isPresent()) {
                return slip;
            }
        }
        return expected
                ? Optional.of(said.complaint(missingSign(said)))
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
                if (said.source().equals("then")) {
                    return Optional.of(
                            "there is no `then` in Java; what is to be done stands right after the condition");
                }
                return Optional.of(
                        "`%s` alone does nothing; give it a name, or call something with it"
                                .formatted(said.source()));
            case "variable.not.allowed":
                return Optional.of(
                        "a variable can't be declared here alone; put braces around it: `{ … }`");
            case "else.without.if":
                return Optional.of("this `else` has no `if` before it");
            case "orphaned":
                return Optional.of(
                        "this `%s` stands outside of a `switch`".formatted(said.source()));
            default:
                return Optional.empty();
        }
    }

    private static String missingSign(Said said) {
        String sign = said.inMessage(EXPECTED, 1);
        String after = said.wordBefore(said.at());
        if (sign.equals("';'")) {
            return "a semicolon is missing after `%s`".formatted(after);
        }
        if (sign.startsWith("')'") && said.text().startsWith(";", said.at())) {
            return "a `)` is missing before `;`";
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
