package coldwright.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a quantity at the beginning of a text: {@code 1 1/2 cups}, {@code 2–3 EL}, {@code 2 x 400
 * g}, {@code half a}, {@code 1 cup plus 2 tbsp}, {@code 200 g/7 oz}.
 *
 * @param quantity what was read
 * @param rest the text after it
 */
record QuantityScanner(Quantity quantity, String rest) {
    private static final Pattern ABOUT =
            Pattern.compile(
                    "(?iu)(?:(?:about|approx\\.?|approximately|around|circa|ca\\.?|etwa|roughly|scant|rund|just under)(?= )|[~≈])\\s*");
    private static final Pattern MIXED =
            Pattern.compile("(\\d{1,4})(?: +|-)(\\d{1,2})/([234568]|10|16)(?!\\d)");
    private static final Pattern FRACTION =
            Pattern.compile("(\\d{1,2}) ?/ ?([234568]|10|16)(?![\\d/])");
    private static final Pattern THOUSANDS =
            Pattern.compile("([1-9]\\d{0,2})[.,](\\d{3})(?!\\d|[.,]\\d)");
    private static final Pattern DECIMAL =
            Pattern.compile("(\\d{1,9})(?:[.,](\\d{1,9}))?(?![\\d.,]*\\d)");
    private static final Pattern WORD = Pattern.compile("(?u)(\\p{L}+)(?![\\p{L}'’-])");
    private static final Pattern ONE_OF =
            Pattern.compile(
                    "(?iu)(?:(?:knob|handful|splash|stick|glass|drop|bunch|sprig|piece) of |(?:pinch|dash|prise|schuss|handvoll|messerspitze|msp\\.?|spritzer|bund) )");
    private static final Pattern TO =
            Pattern.compile("(?iu) ?(?:[-–—]|to\\b|bis\\b|or\\b|oder\\b) ?");
    private static final Pattern TIMES = Pattern.compile("(?iu) ?[x×*] ?(?=\\d)");
    private static final Pattern PLUS =
            Pattern.compile("(?iu) ?(?:\\+|\\bplus\\b|\\bund\\b|\\band\\b|&) ?");
    private static final Pattern SLASH = Pattern.compile(" ?[/|] ?");
    private static final Pattern HEAPED =
            Pattern.compile("(?iu)(?:heaped|heaping|rounded|gehäufte[rn]?|geh\\.)[ -]+");
    private static final Pattern LEVEL =
            Pattern.compile(
                    "(?iu)(?:level|scant|gestrichene[rn]?|gestr\\.|knappe[rn]?|generous|good|gute[rn]?)[ -]+");
    private static final Pattern SIZE =
            Pattern.compile(
                    "(?iu)(extra[- ]large|lg\\.|sm\\.|med\\.|small|medium(?:-sized)?|large|big|klein\\p{L}*|kl\\.|mittelgroß\\p{L}*|mittel|groß\\p{L}*|gr\\.)(?= )[ ]+");
    private static final Pattern UNIT =
            Pattern.compile("(?u)[ -]?(fl-oz|[\\p{L}]+)\\.?(?![\\p{L}])");

    /** Reads the quantity at the beginning; empty if there is none. */
    static Optional<QuantityScanner> scan(String text) {
        String about = skip(ABOUT, text);
        Numeral first = Numeral.at(about);
        if (first == null) {
            Matcher one = ONE_OF.matcher(about);
            return one.lookingAt() ? scan("1 " + about) : Optional.empty();
        }
        List<Double> counts = first.values();
        String rest = first.rest();
        boolean range = false;
        Matcher to = TO.matcher(rest);
        Numeral last = to.lookingAt() ? Numeral.at(rest.substring(to.end())) : null;
        if (last != null && last.values().get(0) > counts.get(0)) {
            counts = List.of((counts.get(0) + last.values().get(0)) / 2);
            rest = last.rest();
            range = true;
        }
        Matcher times = TIMES.matcher(rest);
        if (times.lookingAt()) {
            Numeral each = Numeral.at(rest.substring(times.end()));
            if (each != null) {
                counts = List.of(counts.get(0) * each.values().get(0));
                rest = each.rest();
            }
        }
        return Optional.of(unit(text, counts, range, rest).joined());
    }

    private static QuantityScanner unit(
            String text, List<Double> counts, boolean range, String after) {
        String rest = after.strip();
        Matcher size = SIZE.matcher(rest);
        String sized = "";
        if (size.lookingAt()) {
            sized = sizeOf(size.group(1));
            rest = rest.substring(size.end());
        }
        String level = skip(LEVEL, rest);
        String spoon = skip(HEAPED, level);
        Matcher word = UNIT.matcher(spoon);
        Optional<CookingUnit> unit =
                word.lookingAt() ? CookingUnit.of(word.group(1)) : Optional.empty();
        if (unit.isEmpty()) {
            String whole = text.substring(0, text.length() - rest.length()).strip();
            return new QuantityScanner(
                    new Quantity(whole, counts, range, unit, sized, false), rest);
        }
        String left = spoon.substring(word.end()).strip();
        String whole = text.substring(0, text.length() - left.length()).strip();
        boolean heaped = spoon.length() < level.length();
        return new QuantityScanner(new Quantity(whole, counts, range, unit, sized, heaped), left);
    }

    /** With a second quantity after plus added, or after a slash left out. */
    private QuantityScanner joined() {
        Matcher plus = PLUS.matcher(rest);
        Matcher slash = SLASH.matcher(rest);
        boolean adds = plus.lookingAt();
        if (quantity.unit().isEmpty() || !adds && !slash.lookingAt()) {
            return this;
        }
        QuantityScanner more = scan(rest.substring(adds ? plus.end() : slash.end())).orElse(null);
        if (more == null || more.quantity.unit().isEmpty()) {
            return this;
        }
        CookingUnit one = quantity.unit().get();
        CookingUnit other = more.quantity.unit().get();
        if (!adds) {
            boolean metric = List.of("g", "kg", "ml", "cl", "dl", "l").contains(other.name());
            return metric ? more : new QuantityScanner(quantity, more.rest);
        }
        if (one.kind() != other.kind() || one.kind() == CookingUnit.Kind.MEASURE) {
            return this;
        }
        double sum =
                quantity.count()
                        + more.quantity.count() * other.amounts().get(0) / one.amounts().get(0);
        return new QuantityScanner(quantity.with(sum), more.rest);
    }

    static String sizeOf(String word) {
        String low = word.toLowerCase(java.util.Locale.ROOT);
        if (low.startsWith("extra")) {
            return "extra large";
        }
        if (low.startsWith("s") || low.startsWith("kl")) {
            return "small";
        }
        return low.startsWith("m") ? "medium" : "large";
    }

    private static String skip(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.lookingAt() ? text.substring(matcher.end()) : text;
    }

    /**
     * A number at the beginning of a text; two values if its comma or point may mean two things.
     */
    private record Numeral(List<Double> values, String rest) {
        static Numeral at(String text) {
            Matcher mixed = MIXED.matcher(text);
            if (mixed.lookingAt() && below(mixed.group(2), mixed.group(3))) {
                return of(
                        text,
                        mixed,
                        Double.parseDouble(mixed.group(1)) + ratio(mixed.group(2), mixed.group(3)));
            }
            Matcher fraction = FRACTION.matcher(text);
            if (fraction.lookingAt() && !fraction.group(2).matches("0+")) {
                return of(text, fraction, ratio(fraction.group(1), fraction.group(2)));
            }
            Matcher thousands = THOUSANDS.matcher(text);
            if (thousands.lookingAt()) {
                double small = Double.parseDouble(thousands.group(1) + "." + thousands.group(2));
                return of(text, thousands, small * 1000, small);
            }
            Matcher decimal = DECIMAL.matcher(text);
            if (decimal.lookingAt()) {
                String part = decimal.group(2) == null ? "0" : decimal.group(2);
                return of(text, decimal, Double.parseDouble(decimal.group(1) + "." + part));
            }
            return word(text);
        }

        private static Numeral word(String text) {
            Matcher word = WORD.matcher(text);
            Optional<CookingUnit> number =
                    word.lookingAt() ? CookingUnit.number(word.group(1)) : Optional.empty();
            if (number.isEmpty()) {
                return null;
            }
            double value = number.get().amounts().get(0);
            Numeral found = of(text, word, value);
            Numeral next = value == 1 || value == 0.5 ? word(found.rest.strip()) : null;
            return next == null ? found : of(value * next.values.get(0), next.rest);
        }

        private static Numeral of(String text, Matcher found, double... values) {
            List<Double> all = new ArrayList<>();
            for (double value : values) {
                all.add(value);
            }
            return new Numeral(List.copyOf(all), text.substring(found.end()));
        }

        private static Numeral of(double value, String rest) {
            return new Numeral(List.of(value), rest);
        }

        private static boolean below(String above, String below) {
            return !below.matches("0+") && ratio(above, below) < 1;
        }

        private static double ratio(String above, String below) {
            return Double.parseDouble(above) / Double.parseDouble(below);
        }
    }
}
