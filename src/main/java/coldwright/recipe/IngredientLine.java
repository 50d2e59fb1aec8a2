package coldwright.recipe;

import static coldwright.recipe.Weighing.phrase;

import coldwright.recipe.LineReading.Choice;
import coldwright.recipe.LineReading.Part;
import coldwright.recipe.LineReading.State;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.IngredientKind;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a line of a recipe as people write it, in English or German: {@code 2 large egg yolks},
 * {@code 1 cup (240 ml) cream}, {@code Saft von 1 Zitrone}, {@code Zucker: 150 g}. Nothing is
 * guessed in silence: each mass comes with how it follows, and what may mean two things is a
 * choice.
 */
public final class IngredientLine {
    private static final int MOST_CHARACTERS = 400;
    private static final Pattern BULLET =
            Pattern.compile("^\\s*(?:[-*•·▢□☐✓–—]|\\[[ x]?\\]|\\d{1,2}[.)](?= +\\d))+\\s*");
    private static final Pattern BRACKET = Pattern.compile("[(\\[{]([^()\\[\\]{}]*)[)\\]}]");
    private static final Pattern PIECES = Pattern.compile("(?<!\\d),|,(?!\\d)|;| [–—-] ");
    private static final Pattern EACH_BRACKET =
            Pattern.compile("(?iu)^(\\d[\\d/ ]*|one|two|three|an?|eine?) ?\\(([^()]*)\\) ?");
    private static final Pattern DIGIT = Pattern.compile("(?<![\\d/.]|\\d,)\\d");
    private static final Pattern OR = Pattern.compile("(?iu)^(.+?) (?:or|oder|bzw\\.?) (.+)$");
    private static final Pattern HEADING =
            Pattern.compile(
                    "(?iu)(?:for (?:the )?|für (?:das |die |den )?|zum |to )?[^0-9]{0,60}:|(?:ingredients|zutaten|method|directions|instructions|preparation|zubereitung|anleitung|for the [\\p{L} ]+|für (?:das|die|den) [\\p{L} ]+)");
    private static final String PART =
            "(?:juice|zest|peel|rind|saft|schale|abrieb|zesten|seeds|flesh|pulp|mark|fruchtfleisch|yolks?|whites?|eigelbe?|eiweiße?)";
    private static final Pattern PART_OF =
            Pattern.compile(
                    "(?iu)^(?:the |das |die |der )?((?:(?:finely|freshly|fein|abgeriebene?r?|grated|geriebene?|squeezed|scraped) )*"
                            + PART
                            + "(?: ?(?:and|und|&|\\+) ?(?:(?:grated|abgeriebene|finely) )*"
                            + PART
                            + ")?) (?:(?:of|from|von|aus) )?(.+)$");
    private static final Pattern JUICE =
            Pattern.compile("(?iu)\\b(?:juice[d]?|saft|ausgepresst|gepresst|squeezed)\\b");
    private static final Pattern ZEST =
            Pattern.compile(
                    "(?iu)\\b(?:zest(?:ed)?|peel|rind|schale|abrieb|zesten|abgerieben\\p{L}*)\\b");
    private static final Pattern YOLKS = Pattern.compile("(?iu)\\b(?:yolks?|eigelbe?|dotter)\\b");
    private static final Pattern WHITES = Pattern.compile("(?iu)\\b(?:whites?|eiweiße?|eiklar)\\b");
    private static final Pattern SEPARATED = Pattern.compile("(?iu)\\b(?:separated|getrennt)\\b");
    private static final Pattern EACH = Pattern.compile("(?iu)\\b(?:each|je|à|jeweils)\\b");

    private static final CookingUnit OUNCE_OF_WEIGHT =
            new CookingUnit(
                    CookingUnit.Kind.MASS, List.of(28.3495), "oz (28.35 g)", "international ounce");

    private final NameReader names;
    private final String text;
    private final List<String> tails = new ArrayList<>();
    private String amount = "";
    private String name = "";

    private IngredientLine(String text, NameReader names) {
        this.text = text;
        this.names = names;
    }

    /**
     * Reads a line with the ingredients of the shelf.
     *
     * @param line the line, in any of the usual ways of writing
     * @return what was understood, or what is to be decided
     */
    public static LineReading read(String line) {
        return read(line, List.of());
    }

    /**
     * Reads a line with ingredients of one's own too.
     *
     * @param line the line
     * @param own ingredients that are searched before those of the shelf
     * @return what was understood, or what is to be decided
     */
    public static LineReading read(String line, Collection<Ingredient> own) {
        return new IngredientLine(line.strip(), new NameReader(own)).read();
    }

    /**
     * Reads the amount of a known ingredient, as in a table. A number without a unit is grams,
     * unless pieces are as likely.
     *
     * @param amount the amount as written
     * @param ingredient the ingredient
     * @return what was understood, or what is to be decided
     */
    public static LineReading amount(String amount, Ingredient ingredient) {
        IngredientLine line =
                new IngredientLine(amount.strip(), new NameReader(List.of(ingredient)));
        line.amount = amount.strip();
        line.name = ingredient.name();
        String plain = normal(line.amount);
        QuantityScanner found = QuantityScanner.scan(plain).orElse(null);
        if (found == null || !found.rest().isBlank()) {
            return LineReading.unknown(
                    line.text,
                    line.amount,
                    line.name,
                    phrase("unknown.amount", line.amount),
                    List.of());
        }
        Weighing weighing =
                found.quantity().unit().isEmpty() && found.quantity().size().isEmpty()
                        ? Weighing.bare(found.quantity(), ingredient)
                        : Weighing.of(found.quantity(), ingredient, "");
        return line.reading(weighing, ingredient);
    }

    private LineReading read() {
        String plain = BULLET.matcher(normal(text)).replaceFirst("");
        if (plain.isBlank()
                || plain.length() > MOST_CHARACTERS
                || HEADING.matcher(plain).matches()) {
            return LineReading.other(text);
        }
        Matcher partOf = PART_OF.matcher(plain);
        if (partOf.matches() && QuantityScanner.scan(partOf.group(2)).isPresent()) {
            plain = partOf.group(2) + ", " + partOf.group(1);
        }
        return whole(plain);
    }

    /** A line without bullets, its quantity first or last. */
    private LineReading whole(String line) {
        String plain = line;
        List<String> brackets = new ArrayList<>();
        plain = EACH_BRACKET.matcher(plain).replaceFirst("$1 $2 ");
        Matcher bracket = BRACKET.matcher(plain);
        while (bracket.find()) {
            brackets.add(bracket.group(1).strip());
        }
        String bare = BRACKET.matcher(plain).replaceAll(" ").replaceAll("\\s+", " ").strip();
        boolean known = names.exact(NameReader.squeezed(bare)).isPresent();
        QuantityScanner found =
                known ? null : QuantityScanner.scan(bare).orElseGet(() -> last(bare));
        String rest = found == null ? bare : found.rest();
        Quantity quantity = found == null ? null : found.quantity();
        if (found != null && found.quantity().unit().isEmpty()) {
            QuantityScanner inner = QuantityScanner.scan(rest).orElse(null);
            if (inner != null && inner.quantity().unit().isPresent()) {
                quantity =
                        weighed(inner.quantity()).with(quantity.count() * inner.quantity().count());
                rest = inner.rest();
            }
        }
        amount = quantity == null ? "" : quantity.text();
        rest = rest.replaceFirst("(?iu)^(?:of|von|vom|x|×)\\b\\s*", "");
        if (quantity != null
                && !quantity.is(CookingUnit.Kind.MEASURE)
                && quantity.unit().isPresent()) {
            rest = withoutContainer(rest);
        }
        return alternatives(quantity, rest, brackets);
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

    /** Without the can or tub whose mass was stated. */
    private static String withoutContainer(String rest) {
        Matcher word =
                Pattern.compile("(?u)^[-\\s]*(\\p{L}+)\\.?(?: of)?\\s+(?=\\p{L})").matcher(rest);
        boolean container =
                word.lookingAt()
                        && CookingUnit.of(word.group(1))
                                .filter(unit -> unit.is(CookingUnit.Kind.MEASURE))
                                .isPresent();
        return container ? rest.substring(word.end()) : rest;
    }

    private LineReading alternatives(Quantity quantity, String rest, List<String> brackets) {
        String[] pieces = PIECES.split(rest, -1);
        Matcher or = OR.matcher(pieces[0].strip());
        if (!or.matches()) {
            return named(quantity, rest, brackets);
        }
        String tail = rest.substring(pieces[0].length());
        String second = or.group(2);
        String noun = second.substring(second.lastIndexOf(' ') + 1);
        LineReading one = copy().named(quantity, or.group(1) + tail, brackets);
        if (one.state() == State.UNKNOWN && second.indexOf(' ') > 0) {
            one = copy().named(quantity, or.group(1) + " " + noun + tail, brackets);
        }
        QuantityScanner own = QuantityScanner.scan(second).orElse(null);
        LineReading other =
                own == null
                        ? copy().named(quantity, second + tail, brackets)
                        : copy().named(own.quantity(), own.rest() + tail, List.of());
        if (other.parts().isEmpty() || one.state() == State.ASK) {
            return one;
        }
        if (one.parts().isEmpty()) {
            return one;
        }
        return LineReading.ask(
                text,
                amount,
                rest,
                phrase("why.or"),
                List.of(choice(one.parts()), choice(other.parts())));
    }

    private IngredientLine copy() {
        IngredientLine copy = new IngredientLine(text, names);
        copy.amount = amount;
        return copy;
    }

    private LineReading named(Quantity stated, String rest, List<String> brackets) {
        String[] pieces = PIECES.split(rest, -1);
        for (int i = 1; i < pieces.length; i++) {
            tails.add(pieces[i].strip());
        }
        Quantity quantity = stated == null ? last(tails) : stated;
        boolean all = true;
        for (String bracket : brackets) {
            QuantityScanner inner = QuantityScanner.scan(bracket).orElse(null);
            boolean replaces =
                    inner != null
                            && (inner.quantity().is(CookingUnit.Kind.MASS)
                                    || inner.quantity().is(CookingUnit.Kind.VOLUME)
                                            && !inner.quantity()
                                                    .unit()
                                                    .get()
                                                    .name()
                                                    .matches("tbsp|tsp|el|tl"))
                            && inner.rest()
                                    .strip()
                                    .matches("(?iu)(?:each|je|in total|total|insgesamt)?");
            if (replaces && stated != null && !stated.is(CookingUnit.Kind.MASS)) {
                quantity = inner.quantity();
                all = !EACH.matcher(bracket).find();
            } else if (inner == null || inner.quantity().unit().isEmpty()) {
                tails.add(bracket);
            }
        }
        Sized sized = sized(pieces[0]);
        name = sized.name();
        Quantity meant = quantity == null ? null : quantity.sized(sized.size());
        if (stated != null && quantity != stated) {
            boolean container = stated.is(CookingUnit.Kind.MEASURE);
            if (container && stated.count() != 1 && all) {
                return each(stated, meant);
            }
            meant = all ? meant : meant.with(meant.count() * stated.count());
        }
        boolean canned = stated != null && stated.unit().filter(u -> u.name().equals("can")).isPresent();
        boolean ownName = canned && names.exact("canned " + name).isPresent();
        return found(meant, names.read(ownName ? "canned " + name : name, tails));
    }

    /** A tail such as {@code pinch} or {@code eine Prise}. */
    private static Quantity last(List<String> tails) {
        for (String tail : List.copyOf(tails)) {
            QuantityScanner found =
                    QuantityScanner.scan(tail)
                            .or(() -> QuantityScanner.scan("1 " + tail))
                            .filter(
                                    one ->
                                            one.rest().isBlank()
                                                    && one.quantity().unit().isPresent())
                            .orElse(null);
            if (found != null) {
                tails.remove(tail);
                return found.quantity();
            }
        }
        return null;
    }

    private record Sized(String name, String size) {}

    /** A size that comes before the name or after it in brackets, as German eggs have it. */
    private Sized sized(String piece) {
        Matcher size =
                Pattern.compile(
                                "(?iu)^\\s*(extra[- ]large|small|medium(?:-sized)?|large|kleine[rs]?|mittelgroße[rs]?|große[rs]?) (.+)$")
                        .matcher(piece);
        if (size.matches()) {
            return new Sized(
                    NameReader.squeezed(size.group(2)), QuantityScanner.sizeOf(size.group(1)));
        }
        for (String tail : List.copyOf(tails)) {
            if (tail.matches("(?iu)(?:(?:größe|gr\\.|size) )?(?:S|M|L|XL)")) {
                tails.remove(tail);
            }
        }
        return new Sized(NameReader.squeezed(piece), "");
    }

    /** Two cans (400 g): is that each? */
    private LineReading each(Quantity stated, Quantity meant) {
        NameReader.Found found = names.read(name, tails);
        if (found.ingredient().isEmpty()) {
            return found(meant, found);
        }
        Ingredient ingredient = found.ingredient().get();
        List<Choice> choices = new ArrayList<>();
        for (double count : List.of(stated.count(), 1.0)) {
            Weighing.of(meant.with(meant.count() * count), ingredient, text)
                    .options()
                    .forEach(weight -> choices.add(choice(List.of(part(ingredient, weight)))));
        }
        return LineReading.ask(text, amount, name, phrase("why.each"), choices);
    }

    private LineReading found(Quantity quantity, NameReader.Found found) {
        if (found.ingredient().isEmpty()) {
            return unknownName(quantity, found);
        }
        Ingredient ingredient = found.ingredient().get();
        if (quantity == null) {
            return nothing(ingredient);
        }
        String after = String.join(" ", tails);
        if (!quantity.is(CookingUnit.Kind.MASS) && !quantity.is(CookingUnit.Kind.VOLUME)) {
            Optional<LineReading> parts = partsOf(quantity, ingredient, after);
            if (parts.isPresent()) {
                return parts.get();
            }
        }
        Optional<CookingUnit> counted =
                quantity.unit().isPresent()
                        ? quantity.unit()
                        : CookingUnit.of(name.substring(name.lastIndexOf(' ') + 1))
                                .filter(unit -> ingredient.measure(unit.name()).isPresent());
        Quantity whole = counted.map(quantity::in).orElse(quantity);
        String before = PIECES.split(text.toLowerCase(Locale.ROOT))[0];
        LineReading read = reading(Weighing.of(whole, ingredient, before), ingredient);
        if (read.state() == State.UNKNOWN && quantity.is(CookingUnit.Kind.MEASURE)) {
            String longer = name + " " + quantity.unit().orElseThrow().name();
            Optional<Ingredient> other = names.exact(longer);
            if (other.isPresent()) {
                read =
                        reading(
                                Weighing.of(quantity.in(CookingUnit.PIECE), other.get(), ""),
                                other.get());
            }
        }
        if (found.doubt().isPresent() && !read.parts().isEmpty()) {
            String doubt = found.doubt().get();
            Phrase label = phrase("choice.without", ingredient.name(), doubt);
            boolean percent = doubt.endsWith("%");
            return LineReading.ask(
                    text,
                    amount,
                    name,
                    percent
                            ? phrase("why.percent", ingredient.name(), doubt.replace(" %", ""))
                            : phrase("why.word", doubt),
                    List.of(new Choice(label, read.parts()), leave(ingredient)));
        }
        return read;
    }

    private LineReading unknownName(Quantity quantity, NameReader.Found found) {
        if (quantity == null && found.similar().isEmpty()) {
            return LineReading.other(text);
        }
        Phrase why =
                found.similar().isEmpty()
                        ? phrase("unknown.none", name)
                        : phrase("unknown.name", name);
        return LineReading.unknown(text, amount, name, why, found.similar());
    }

    /** Salt, without an amount. */
    private LineReading nothing(Ingredient ingredient) {
        boolean spice =
                List.of(IngredientKind.BASIC, IngredientKind.FLAVOUR, IngredientKind.STABILISER)
                        .contains(ingredient.kind());
        Quantity some =
                spice
                        ? Quantity.of(1, CookingUnit.PINCH, "1 pinch")
                        : Quantity.of(100, CookingUnit.GRAM, "100 g");
        List<Choice> choices = new ArrayList<>();
        choices.add(leave(ingredient));
        Weighing.of(some, ingredient, "")
                .options()
                .forEach(weight -> choices.add(choice(List.of(part(ingredient, weight)))));
        return LineReading.ask(text, "", name, phrase("why.nothing", ingredient.name()), choices);
    }

    /** The juice and the zest of a fruit, the yolks of eggs. */
    private Optional<LineReading> partsOf(Quantity quantity, Ingredient ingredient, String after) {
        if (ingredient.name().equals("egg")) {
            boolean yolks = YOLKS.matcher(after).find();
            if (yolks || WHITES.matcher(after).find()) {
                Ingredient part = names.exact(yolks ? "egg yolk" : "egg white").orElseThrow();
                return Optional.of(reading(Weighing.of(quantity, part, ""), part));
            }
            if (SEPARATED.matcher(after).find()) {
                Ingredient yolk = names.exact("egg yolk").orElseThrow();
                return Optional.of(
                        LineReading.ask(
                                text,
                                amount,
                                name,
                                phrase("why.separated"),
                                List.of(
                                        choice(parts(quantity, ingredient)),
                                        choice(parts(quantity, yolk)))));
            }
            return Optional.empty();
        }
        Optional<Ingredient> juice = fruitPart(ingredient, "juice");
        Optional<Ingredient> zest = fruitPart(ingredient, "zest");
        if (ingredient.kind() != IngredientKind.FRUIT || juice.isEmpty() || zest.isEmpty()) {
            return Optional.empty();
        }
        List<Part> juiced = fruit(quantity, juice.get());
        List<Part> zested = fruit(quantity, zest.get());
        List<Part> chosen = new ArrayList<>();
        if (JUICE.matcher(after).find()) {
            chosen.addAll(juiced);
        }
        if (ZEST.matcher(after).find()) {
            chosen.addAll(zested);
        }
        if (!chosen.isEmpty()) {
            return Optional.of(LineReading.understood(text, amount, name, chosen));
        }
        List<Part> both = new ArrayList<>(juiced);
        both.addAll(zested);
        return Optional.of(
                LineReading.ask(
                        text,
                        amount,
                        name,
                        phrase("why.part"),
                        List.of(
                                choice(juiced),
                                choice(both),
                                choice(zested),
                                choice(parts(quantity, ingredient)))));
    }

    private Optional<Ingredient> fruitPart(Ingredient fruit, String part) {
        return names.exact(fruit.name() + " " + part)
                .or(() -> names.exact(name + " " + part))
                .filter(one -> one.measure("fruit").isPresent());
    }

    private List<Part> fruit(Quantity quantity, Ingredient part) {
        CookingUnit fruit = new CookingUnit(CookingUnit.Kind.MEASURE, List.of(1.0), "fruit", "");
        return parts(quantity.in(fruit), part);
    }

    private List<Part> parts(Quantity quantity, Ingredient ingredient) {
        return Weighing.of(quantity, ingredient, "").options().stream()
                .limit(1)
                .map(weight -> part(ingredient, weight))
                .toList();
    }

    private LineReading reading(Weighing weighing, Ingredient ingredient) {
        List<List<Part>> readings =
                weighing.options().stream()
                        .map(weight -> List.of(part(ingredient, weight)))
                        .toList();
        if (readings.isEmpty()) {
            return LineReading.unknown(text, amount, name, weighing.why().orElseThrow(), List.of());
        }
        return readings.size() == 1
                ? LineReading.understood(text, amount, name, readings.get(0))
                : LineReading.ask(
                        text,
                        amount,
                        name,
                        weighing.why().orElseThrow(),
                        readings.stream().map(IngredientLine::choice).toList());
    }

    private static Part part(Ingredient ingredient, Weighing.Weight weight) {
        return new Part(ingredient, weight.massG(), weight.how(), weight.source());
    }

    private static Choice choice(List<Part> parts) {
        List<Object> labels = new ArrayList<>();
        parts.forEach(
                part ->
                        labels.add(
                                phrase(
                                        "choice",
                                        DisplayText.number(Math.round(part.massG() * 10) / 10.0),
                                        part.ingredient().name())));
        return new Choice(phrase("choice.all", labels), parts);
    }

    private static Choice leave(Ingredient ingredient) {
        return new Choice(phrase("choice.leave", ingredient.name()), List.of());
    }

    /** With plain fractions, spaces and units. */
    private static String normal(String line) {
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
        return plain.replaceAll("(?iu)(?<!\\p{L})fl(?:uid|\\.)? ?(?:oz|ounces?)\\b\\.?", "fl-oz")
                .replaceAll("\\.{2,}|…|_{2,}", " ")
                .replaceAll("[’‘´`]", "'")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
