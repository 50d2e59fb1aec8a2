package coldwright.batch;

import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The source that a value of a report rests on; its text names author, year and title. */
public enum Basis implements Worded {
    /** The cook's own scale, thermometer and clock. */
    RECIPE(Kind.MEASURED),
    INGREDIENTS(Kind.PUBLISHED),
    FREEZING(Kind.PUBLISHED),
    LEIGHTON(Kind.PUBLISHED),
    SWEETNESS(Kind.PUBLISHED),
    DENSITY(Kind.PUBLISHED),
    OVERRUN(Kind.PUBLISHED),
    HEAT(Kind.PUBLISHED),
    BATH(Kind.PUBLISHED),
    CRYSTALS(Kind.PUBLISHED),
    SMOOTH(Kind.PUBLISHED),
    TIME(Kind.TYPICAL),
    FIRMNESS(Kind.FROM_MEMORY),
    TRADE_SCALE(Kind.COMMON_PRACTICE),
    SHAKING(Kind.COMMON_PRACTICE);

    /** What a source is worth. */
    public enum Kind implements Worded {
        MEASURED,
        PUBLISHED,
        /** Typical values, with a spread that is shown. */
        TYPICAL,
        COMMON_PRACTICE,
        FROM_MEMORY;

        /** Whether nobody opened a source: the value is then labelled a rule of thumb. */
        public boolean ruleOfThumb() {
            return this == COMMON_PRACTICE || this == FROM_MEMORY;
        }
    }

    /**
     * Where a model holds.
     *
     * @param least lowest value, in the unit
     * @param most highest value, in the unit
     * @param unit such as °C for temperatures
     */
    public record Validity(double least, double most, String unit) {}

    private static final String AREA = "batch";

    private final Kind kind;

    Basis(Kind kind) {
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }

    /** Its source line: what kind of source it is, and its text. */
    public Phrase line() {
        return Phrase.of(AREA, "source", kind.phrase(), phrase());
    }

    /** The words with the label that they are a rule of thumb. */
    static Phrase ruleOfThumb(Phrase words) {
        return Phrase.of(AREA, "rule-of-thumb.of", words);
    }

    /**
     * A reason as the window, the terminal and paper give it: a source that nobody opened is called
     * a rule of thumb.
     *
     * @param reason a sentence that may contain the text of a source
     */
    public static Phrase labelled(Phrase reason) {
        if (kind(reason).filter(Kind::ruleOfThumb).isPresent()) {
            return Phrase.of(AREA, "rule-of-thumb");
        }
        List<Object> values = new ArrayList<>(reason.values());
        values.replaceAll(one -> one instanceof Phrase phrase ? labelled(phrase) : one);
        return new Phrase(reason.area(), reason.key(), values);
    }

    /** The source lines of the rules of thumb in a reason: the kind, and of which measure. */
    static List<Phrase> linesOf(Phrase reason) {
        List<Phrase> lines = new ArrayList<>();
        for (Object value : reason.values()) {
            if (value instanceof Phrase phrase) {
                kind(phrase)
                        .filter(Kind::ruleOfThumb)
                        .ifPresentOrElse(
                                kind -> lines.add(usual(kind, reason.values().get(0))),
                                () -> lines.addAll(linesOf(phrase)));
            }
        }
        return lines;
    }

    private static Phrase usual(Kind kind, Object measure) {
        Object name =
                measure instanceof Phrase value && value.area().equals("science.plan")
                        ? Phrase.of("science.style", value.key().replace("value", "StyleQuantity"))
                        : measure;
        Phrase range = Phrase.of(AREA, "source.usual", name);
        return Phrase.of(AREA, "source", kind.phrase(), range);
    }

    /** The kind of a source that a finding names; empty for any other text. */
    private static Optional<Kind> kind(Phrase text) {
        return text.area().equals("science.style") && text.key().equals("source.practice")
                ? Optional.of(Kind.COMMON_PRACTICE)
                : Optional.empty();
    }
}
