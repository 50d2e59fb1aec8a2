package coldwright.recipe;

import static coldwright.recipe.Weighing.phrase;

import coldwright.recipe.CookingUnit.Kind;
import coldwright.recipe.LineReading.Choice;
import coldwright.recipe.LineReading.Part;
import coldwright.recipe.LineReading.State;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.IngredientKind;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
    private static final Pattern PIECES = Pattern.compile("(?<!\\d),|,(?!\\d)|;| [–—-] ");
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
    private static final Pattern EACH = Pattern.compile("(?iu)\\b(?:each|je|à|jeweils)\\b");

    private static final Pattern SIZED =
            Pattern.compile(
                    "(?iu)^\\s*(extra[- ]large|small|medium(?:-sized)?|large|kleine[rs]?|mittelgroße[rs]?|große[rs]?) (.+)$");
    private static final Pattern GERMAN_SIZE =
            Pattern.compile("(?iu)(?:(?:größe|gr\\.|size) )?(?:S|M|L|XL)");
    private static final Pattern OF_ALL =
            Pattern.compile("(?iu)(?:each|je|in total|total|insgesamt)?");

    /** What a recipe may name without an amount. */
    private static final Set<IngredientKind> LITTLE =
            Set.of(IngredientKind.BASIC, IngredientKind.FLAVOUR, IngredientKind.STABILISER);

    private static final List<String> SPOONS = List.of("tsp", "tl", "tbsp", "el");

    private final NameReader names;
    private final String text;
    private final List<String> tails = new ArrayList<>();
    private String amount = "";
    private String name = "";
    private boolean canned;

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
        QuantityScanner found = TypedAmount.scan(line.amount).orElse(null);
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
        return line.decide(weighing.parts(ingredient), weighing.why());
    }

    /** Ingredients whose name is part of a name or like it; at most four. */
    public static List<Ingredient> similar(String name, Collection<Ingredient> own) {
        return new NameReader(own).read(LineText.plain(name), List.of()).similar();
    }

    private LineReading read() {
        String plain = LineText.plain(text);
        if (plain.isBlank()
                || plain.length() > MOST_CHARACTERS
                || HEADING.matcher(plain).matches()) {
            return LineReading.other(text);
        }
        Matcher partOf = PART_OF.matcher(plain);
        if (partOf.matches() && QuantityScanner.scan(partOf.group(2)).isPresent()) {
            plain = partOf.group(2) + ", " + partOf.group(1);
        }
        LineText taken = LineText.of(plain, one -> names.exact(one).isPresent());
        amount = taken.quantity() == null ? "" : taken.quantity().text();
        canned = taken.canned();
        return alternatives(taken.quantity(), taken.rest(), taken.brackets());
    }

    /** Butter or margarine: both, if both are known. */
    private LineReading alternatives(Quantity quantity, String rest, List<String> brackets) {
        String first = PIECES.split(rest, -1)[0];
        Matcher or = OR.matcher(first.strip());
        if (!or.matches()) {
            return named(quantity, rest, brackets);
        }
        String tail = rest.substring(first.length());
        String second = or.group(2);
        LineReading one = copy().named(quantity, or.group(1) + tail, brackets);
        if (one.state() == State.UNKNOWN) {
            String noun = second.substring(second.lastIndexOf(' ') + 1);
            one = copy().named(quantity, or.group(1) + " " + noun + tail, brackets);
        }
        QuantityScanner own = QuantityScanner.scan(second).orElse(null);
        LineReading other =
                own == null
                        ? copy().named(quantity, second + tail, brackets)
                        : copy().named(own.quantity(), own.rest() + tail, List.of());
        name = rest;
        return other.parts().isEmpty() || one.parts().isEmpty()
                ? one
                : decide(List.of(one.parts(), other.parts()), Optional.of(phrase("why.or")));
    }

    private IngredientLine copy() {
        IngredientLine copy = new IngredientLine(text, names);
        copy.amount = amount;
        copy.canned = canned;
        return copy;
    }

    private LineReading named(Quantity stated, String rest, List<String> brackets) {
        String[] pieces = PIECES.split(rest, -1);
        for (String tail : List.of(pieces).subList(1, pieces.length)) {
            tails.add(tail.strip());
        }
        Quantity inBrackets = null;
        boolean each = false;
        for (String bracket : brackets) {
            QuantityScanner inner = QuantityScanner.scan(bracket).orElse(null);
            if (stated != null && !stated.is(Kind.MASS) && replaces(inner)) {
                inBrackets = inner.quantity();
                each = EACH.matcher(bracket).find();
            } else if (inner == null || inner.quantity().unit().isEmpty()) {
                tails.add(bracket);
            }
        }
        Quantity quantity = stated == null ? last() : inBrackets == null ? stated : inBrackets;
        if (each) {
            quantity = quantity.with(quantity.count() * stated.count());
        }
        Matcher sized = SIZED.matcher(pieces[0]);
        name = NameReader.squeezed(sized.matches() ? sized.group(2) : pieces[0]);
        if (quantity != null && sized.matches()) {
            quantity = quantity.sized(QuantityScanner.sizeOf(sized.group(1)));
        }
        tails.removeIf(tail -> GERMAN_SIZE.matcher(tail).matches());
        boolean ownName = canned && names.exact("canned " + name).isPresent();
        NameReader.Found found = names.read(ownName ? "canned " + name : name, tails);
        if (found.ingredient().isEmpty()) {
            return unknownName(quantity, found);
        }
        Ingredient ingredient = found.ingredient().get();
        if (quantity == null) {
            return nothing(ingredient);
        }
        boolean cans = inBrackets != null && stated.is(Kind.MEASURE) && stated.count() != 1;
        if (cans && !each) {
            List<List<Part>> readings = new ArrayList<>();
            for (double count : List.of(stated.count(), 1.0)) {
                Quantity all = quantity.with(quantity.count() * count);
                readings.addAll(Weighing.of(all, ingredient, "").parts(ingredient));
            }
            return decide(readings, Optional.of(phrase("why.each")));
        }
        boolean counted = !quantity.is(Kind.MASS) && !quantity.is(Kind.VOLUME);
        Optional<FruitParts> parts =
                counted
                        ? FruitParts.of(
                                quantity, ingredient, name, String.join(" ", tails), names::exact)
                        : Optional.empty();
        return parts.isPresent()
                ? decide(parts.get().readings(), Optional.of(parts.get().why()))
                : doubted(weighed(quantity, ingredient), ingredient, found.doubt());
    }

    /** Whether a quantity in brackets says more exactly what the line says in cups or cans. */
    private static boolean replaces(QuantityScanner inner) {
        return inner != null
                && OF_ALL.matcher(inner.rest().strip()).matches()
                && (inner.quantity().is(Kind.MASS)
                        || inner.quantity().is(Kind.VOLUME)
                                && !SPOONS.contains(inner.quantity().unit().orElseThrow().name()));
    }

    /**
     * The quantity of a tail such as {@code pinch} or {@code eine Prise}; null if there is none.
     */
    private Quantity last() {
        for (String tail : List.copyOf(tails)) {
            QuantityScanner found =
                    QuantityScanner.scan(tail)
                            .or(() -> QuantityScanner.scan("1 " + tail))
                            .filter(one -> one.rest().isBlank())
                            .filter(one -> one.quantity().unit().isPresent())
                            .orElse(null);
            if (found != null) {
                tails.remove(tail);
                return found.quantity();
            }
        }
        return null;
    }

    private LineReading weighed(Quantity quantity, Ingredient ingredient) {
        Optional<CookingUnit> counted =
                CookingUnit.of(name.substring(name.lastIndexOf(' ') + 1))
                        .filter(unit -> ingredient.measure(unit.name()).isPresent())
                        .filter(unit -> quantity.unit().isEmpty());
        String before = PIECES.split(text.toLowerCase(Locale.ROOT))[0];
        Weighing weighing =
                Weighing.of(counted.map(quantity::in).orElse(quantity), ingredient, before);
        if (weighing.options().isEmpty() && quantity.is(Kind.MEASURE)) {
            Optional<Ingredient> other =
                    names.exact(name + " " + quantity.unit().orElseThrow().name());
            if (other.isPresent()) {
                Weighing pieces = Weighing.of(quantity.in(CookingUnit.PIECE), other.get(), "");
                return decide(pieces.parts(other.get()), pieces.why());
            }
        }
        return decide(weighing.parts(ingredient), weighing.why());
    }

    /** A word that may change what it is, or a percentage that no ingredient of that name has. */
    private LineReading doubted(LineReading read, Ingredient ingredient, Optional<String> doubt) {
        if (doubt.isEmpty() || read.parts().isEmpty()) {
            return read;
        }
        String word = doubt.get();
        Phrase why =
                word.endsWith("%")
                        ? phrase("why.percent", ingredient.phrase(), word.replace(" %", ""))
                        : phrase("why.word", word);
        Phrase label = phrase("choice.without", ingredient.phrase(), word);
        return LineReading.ask(
                text,
                amount,
                name,
                why,
                List.of(new Choice(label, read.parts()), leave(ingredient)));
    }

    private LineReading unknownName(Quantity quantity, NameReader.Found found) {
        if (quantity == null && found.similar().isEmpty()) {
            return LineReading.other(text);
        }
        String key = found.similar().isEmpty() ? "unknown.none" : "unknown.name";
        return LineReading.unknown(text, amount, name, phrase(key, name), found.similar());
    }

    /** Salt, without an amount. */
    private LineReading nothing(Ingredient ingredient) {
        boolean little = LITTLE.contains(ingredient.kind()) || ingredient.name().endsWith("zest");
        Quantity some =
                little
                        ? Quantity.of(1, CookingUnit.PINCH, "1 pinch")
                        : Quantity.of(100, CookingUnit.GRAM, "100 g");
        List<Choice> choices = new ArrayList<>(List.of(leave(ingredient)));
        Weighing.of(some, ingredient, "")
                .parts(ingredient)
                .forEach(parts -> choices.add(choice(parts)));
        return LineReading.ask(text, "", name, phrase("why.nothing", ingredient.phrase()), choices);
    }

    /** Unknown, understood or to be chosen, by the number of readings. */
    private LineReading decide(List<List<Part>> readings, Optional<Phrase> why) {
        if (readings.isEmpty()) {
            return LineReading.unknown(text, amount, name, why.orElseThrow(), List.of());
        }
        return readings.size() == 1
                ? LineReading.understood(text, amount, name, readings.get(0))
                : LineReading.ask(
                        text,
                        amount,
                        name,
                        why.orElseThrow(),
                        readings.stream().map(IngredientLine::choice).toList());
    }

    private static Choice choice(List<Part> parts) {
        List<Object> labels = new ArrayList<>();
        for (Part part : parts) {
            double mass = Math.round(part.massG() * 10) / 10.0;
            labels.add(phrase("choice", mass, part.ingredient().phrase()));
        }
        return new Choice(phrase("choice.all", labels), parts);
    }

    private static Choice leave(Ingredient ingredient) {
        return new Choice(phrase("choice.leave", ingredient.phrase()), List.of());
    }
}
