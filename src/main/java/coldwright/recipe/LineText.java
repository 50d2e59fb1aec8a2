package coldwright.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a recipe taken apart, before its name is looked up.
 *
 * @param quantity its quantity; null if there is none
 * @param rest its name and what follows, without the quantity
 * @param brackets what was in brackets
 * @param canned whether the quantity was that of a can
 */
record LineText(Quantity quantity, String rest, List<String> brackets, boolean canned) {
    private static final CookingUnit OUNCE_OF_WEIGHT =
            new CookingUnit(
                    CookingUnit.Kind.MASS, List.of(28.3495), "oz (28.35 g)", "international ounce");

    private static final Pattern BULLET =
            Pattern.compile("^\\s*(?:[-*•·▢□☐✓–—]|\\[[ x]?\\]|\\d{1,2}[.)](?= +\\d))+\\s*");
    private static final Pattern BRACKET = Pattern.compile("[(\\[{]([^()\\[\\]{}]*)[)\\]}]");
    private static final Pattern EACH_BRACKET =
            Pattern.compile("(?iu)^(\\d[\\d/ ]*|one|two|three|an?|eine?) ?\\(([^()]*)\\) ?");
    private static final Pattern DIGIT = Pattern.compile("(?<![\\d/.]|\\d,)\\d");
    private static final Pattern CONTAINER =
            Pattern.compile("(?u)^[-\\s]*(\\p{L}+)\\.?(?: of)?\\s+(?=\\p{L})");

    /** Takes a plain line apart; a whole line that is a known name has no quantity. */
    static LineText of(String plain, Predicate<String> isName) {
        String line = EACH_BRACKET.matcher(plain).replaceFirst("$1 $2 ");
        List<String> brackets = new ArrayList<>();
        Matcher bracket = BRACKET.matcher(line);
        while (bracket.find()) {
            brackets.add(bracket.group(1).strip());
        }
        String bare = BRACKET.matcher(line).replaceAll(" ").replaceAll("\\s+", " ").strip();
        QuantityScanner found =
                isName.test(NameReader.squeezed(bare))
                        ? null
                        : QuantityScanner.scan(bare).orElseGet(() -> last(bare));
        if (found == null) {
            return new LineText(null, bare, brackets, false);
        }
        Quantity quantity = found.quantity();
        String rest = found.rest();
        if (quantity.unit().isEmpty()) {
            QuantityScanner inner = QuantityScanner.scan(rest).orElse(null);
            if (inner != null && inner.quantity().unit().isPresent()) {
                quantity =
                        weighed(inner.quantity()).with(quantity.count() * inner.quantity().count());
                rest = inner.rest();
            }
        }
        rest = rest.replaceFirst("(?iu)^(?:of|von|vom|x|×)\\b\\s*", "");
        String container =
                quantity.is(CookingUnit.Kind.MEASURE) || quantity.unit().isEmpty()
                        ? ""
                        : container(rest);
        String unit =
                container.isEmpty()
                        ? quantity.unit().map(CookingUnit::name).orElse("")
                        : CookingUnit.of(container).orElseThrow().name();
        String name = container.isEmpty() ? rest : CONTAINER.matcher(rest).replaceFirst("");
        return new LineText(quantity, name, brackets, unit.equals("can"));
    }

    /** The can or tub whose mass was stated; empty if there is none. */
    private static String container(String rest) {
        Matcher word = CONTAINER.matcher(rest);
        boolean found =
                word.lookingAt()
                        && CookingUnit.of(word.group(1))
                                .filter(unit -> unit.is(CookingUnit.Kind.MEASURE))
                                .isPresent();
        return found ? word.group(1) : "";
    }

    /** Ounces on a can are of weight. */
    private static Quantity weighed(Quantity onCan) {
        boolean ounces = onCan.unit().filter(unit -> unit.name().equals("oz")).isPresent();
        return ounces ? onCan.in(OUNCE_OF_WEIGHT) : onCan;
    }

    /** The quantity at the end of a line, such as {@code Zucker: 150 g}. */
    private static QuantityScanner last(String plain) {
        Matcher digit = DIGIT.matcher(plain);
        QuantityScanner bare = null;
        while (digit.find()) {
            QuantityScanner found =
                    QuantityScanner.scan(plain.substring(digit.start()))
                            .filter(one -> one.rest().strip().matches("(?:[,;].*)?"))
                            .orElse(null);
            if (found != null) {
                String name = NameReader.squeezed(plain.substring(0, digit.start()));
                QuantityScanner here =
                        new QuantityScanner(
                                found.quantity(),
                                name.replaceFirst("(?iu) [x×]$", "") + found.rest());
                if (found.quantity().unit().isPresent()) {
                    return here;
                }
                bare = here;
            }
        }
        return bare;
    }

    /** With plain fractions, spaces and units. */
    static String plain(String line) {
        String plain =
                line.replace('\u00a0', ' ')
                        .replace('\u202f', ' ')
                        .replace('\t', ' ')
                        .replace('|', ' ');
        String[][] fractions = {
            {"½", "1/2"}, {"¼", "1/4"}, {"¾", "3/4"}, {"⅓", "1/3"}, {"⅔", "2/3"}, {"⅛", "1/8"},
            {"⅜", "3/8"}, {"⅝", "5/8"}, {"⅞", "7/8"}, {"⅕", "1/5"}, {"⅙", "1/6"}, {"⁄", "/"}
        };
        for (String[] fraction : fractions) {
            plain =
                    plain.replaceAll("(?<=\\d)" + fraction[0], " " + fraction[1])
                            .replace(fraction[0], fraction[1]);
        }
        plain = BULLET.matcher(plain).replaceFirst("");
        return plain.replaceAll("(?iu)(?<!\\p{L})fl(?:uid|\\.)? ?(?:oz|ounces?)\\b\\.?", "fl-oz")
                .replaceAll("\\.{2,}|…|_{2,}", " ")
                .replaceAll("[’‘´`]", "'")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
