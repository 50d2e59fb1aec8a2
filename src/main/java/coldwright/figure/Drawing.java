package coldwright.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A drawing to scale that may change with time, as plain data.
 *
 * <pre>{@code
 * Drawing.of("A globule", new Drawing.Field(20, 14, "µm"), new Drawing.ScaleBar(5, "5 µm"))
 *        .on(Tint.Role.SERUM)
 *        .at(new Drawing.Moment(0, "min", "as milked", List.of(new Piece.Disc(10, 7, 2, Tint.of(Tint.Role.FAT)))))
 * }</pre>
 *
 * Immutable: each call returns a new drawing.
 *
 * @param title what it shows
 * @param field the visible area
 * @param bar the scale bar
 * @param ground the background
 * @param warmth the range of the colour scale; empty if no piece is coloured by temperature
 * @param moments the states, in the order of time; a drawing to show needs at least one
 * @param writtenText alternative text by the author; empty to have it computed from the data
 * @param sources where model and data come from
 */
public record Drawing(
        String title,
        Field field,
        ScaleBar bar,
        Tint.Role ground,
        Optional<TemperatureScale> warmth,
        List<Moment> moments,
        String writtenText,
        List<String> sources)
        implements Exhibit {

    /** Copies the lists and validates colours and times. */
    public Drawing {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(writtenText, "writtenText");
        moments = List.copyOf(moments);
        sources = List.copyOf(sources);
        if (bar.length() > field.width()) {
            throw new IllegalArgumentException(
                    "the scale bar is %s %s long, longer than the field, %s %s: choose a shorter one"
                            .formatted(bar.length(), field.unit(), field.width(), field.unit()));
        }
        if (ground == Tint.Role.WARMTH) {
            throw new IllegalArgumentException(
                    "the ground is coloured by warmth; it has no temperature of its own: choose another");
        }
        for (int i = 1; i < moments.size(); i++) {
            if (!(moments.get(i).time() >= moments.get(i - 1).time())) {
                throw new IllegalArgumentException(
                        "moment %d is at %s %s, before the one before it; times must not fall"
                                .formatted(i + 1, moments.get(i).time(), moments.get(i).unit()));
            }
        }
    }

    /**
     * The visible area.
     *
     * @param width from left to right, more than zero
     * @param height from top to bottom, more than zero
     * @param unit the unit of all lengths, such as {@code µm}
     */
    public record Field(double width, double height, String unit) {
        public Field {
            Objects.requireNonNull(unit, "unit");
            positive("width", width);
            positive("height", height);
        }
    }

    /**
     * The scale bar.
     *
     * @param length its length, in the field's unit, more than zero
     * @param label text beside it, such as {@code 50 µm}
     */
    public record ScaleBar(double length, String label) {
        public ScaleBar {
            Objects.requireNonNull(label, "label");
            positive("length", length);
        }
    }

    /**
     * The temperature range of the colour scale.
     *
     * @param coldestC temperature of the coldest colour, °C
     * @param warmestC temperature of the warmest colour, °C, above the coldest
     */
    public record TemperatureScale(double coldestC, double warmestC) {
        public TemperatureScale {
            if (!(coldestC < warmestC && Double.isFinite(warmestC - coldestC))) {
                throw new IllegalArgumentException(
                        "the colours run from %s to %s °C; the first must be the colder"
                                .formatted(coldestC, warmestC));
            }
        }
    }

    /**
     * The state at one time.
     *
     * @param time the time, in its unit
     * @param unit the unit of time, such as {@code min}; empty if time doesn't matter
     * @param label a short caption, such as {@code 12 % of the fat clumped}
     * @param pieces the shapes, drawn in this order
     */
    public record Moment(double time, String unit, String label, List<Piece> pieces) {
        /** Copies the pieces. */
        public Moment {
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(label, "label");
            pieces = List.copyOf(pieces);
            if (!Double.isFinite(time)) {
                throw new IllegalArgumentException(
                        "time is %s; a moment needs a plain number".formatted(time));
            }
        }

        /** The number of points of all its pieces. */
        public int size() {
            return pieces.stream().mapToInt(Piece::size).sum();
        }
    }

    /**
     * A drawing of a visible area without moments, on a background of serum.
     *
     * @param title what it shows
     */
    public static Drawing of(String title, Field field, ScaleBar scaleBar) {
        return new Drawing(
                title,
                field,
                scaleBar,
                Tint.Role.SERUM,
                Optional.empty(),
                List.of(),
                "",
                List.of());
    }

    /** The same drawing on another background. */
    public Drawing on(Tint.Role newGround) {
        return new Drawing(title, field, bar, newGround, warmth, moments, writtenText, sources);
    }

    /**
     * The same drawing with a temperature scale.
     *
     * @param coldestC temperature of the coldest colour, °C
     * @param warmestC temperature of the warmest colour, °C
     */
    public Drawing warmth(double coldestC, double warmestC) {
        Optional<TemperatureScale> scale = Optional.of(new TemperatureScale(coldestC, warmestC));
        return new Drawing(title, field, bar, ground, scale, moments, writtenText, sources);
    }

    /** Adds a moment that is not earlier than the existing ones. */
    public Drawing at(Moment moment) {
        return at(List.of(moment));
    }

    /** Adds moments in the order of time. */
    public Drawing at(List<Moment> more) {
        List<Moment> all = new ArrayList<>(moments);
        all.addAll(more);
        return new Drawing(title, field, bar, ground, warmth, all, writtenText, sources);
    }

    /** Adds a source: author, year, title. */
    public Drawing source(String source) {
        List<String> all = new ArrayList<>(sources);
        all.add(source);
        return new Drawing(title, field, bar, ground, warmth, moments, writtenText, all);
    }

    /** Sets the alternative text, in place of the text computed from the data. */
    public Drawing text(String text) {
        return new Drawing(title, field, bar, ground, warmth, moments, text, sources);
    }

    @Override
    public long size() {
        return moments.stream().mapToLong(Moment::size).sum();
    }

    private static void positive(String name, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(
                    "%s is %s; it must be more than zero".formatted(name, value));
        }
    }
}
