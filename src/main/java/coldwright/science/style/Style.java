package coldwright.science.style;

import coldwright.science.Require;
import coldwright.words.Worded;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What a batch is meant to be. A batch is judged against the usual ranges of its own style only;
 * they are in {@code styles.csv} beside this class, each with its source.
 */
public enum Style implements Worded {
    /** With cooked egg yolk. */
    CUSTARD(-12, 14, Eaten.SCOOPED),
    /** Plain ice cream of milk and cream. */
    ICE_CREAM(-12, 14, Eaten.SCOOPED),
    /** Mostly milk, as gelato is. */
    MILK_ICE(-12, 7, Eaten.SCOOPED),
    /** Fruit with a little milk. */
    SHERBET(-12, 14, Eaten.SCOOPED),
    /** Fruit or another flavour, water and sugar. */
    SORBET(-12, 7, Eaten.SCOOPED),
    GRANITA(-6, 1, Eaten.SCRAPED),
    LOLLY(-15, 14, Eaten.ON_A_STICK),
    FROZEN_YOGURT(-12, 7, Eaten.SCOOPED),
    SOFT_SERVE(-6, 0, Eaten.AT_ONCE),
    /** Without milk, egg or anything else of animals, with fat. */
    VEGAN(-12, 14, Eaten.SCOOPED),
    LOW_SUGAR(-10, 7, Eaten.SCOOPED),
    /** With alcohol, for adults. */
    ADULT(-15, 7, Eaten.SCOOPED);

    /** How it is eaten. */
    public enum Eaten implements Worded {
        SCOOPED,
        /** As it is drawn, never stored. */
        AT_ONCE,
        /** Its crystals are meant to be felt. */
        SCRAPED,
        /** Hard, and bitten or licked. */
        ON_A_STICK
    }

    /**
     * Most salt that a change may lead to, % by mass, potassium and calcium chloride included
     * (common practice, no source). For comparison USDA SR24 19095, vanilla ice cream, has 80 mg of
     * sodium in 100 g, which is 0.2 % as salt; none of its ice creams has more than 110 mg (01243),
     * 0.28 %.
     */
    public static final double MOST_SALT_PERCENT = 0.5;

    private static final Map<String, Map<StyleQuantity, StyleRange>> RANGES = read();

    private final double servingC;
    private final double keptDays;
    private final Eaten eaten;

    Style(double servingC, double keptDays, Eaten eaten) {
        this.servingC = servingC;
        this.keptDays = keptDays;
        this.eaten = eaten;
    }

    /** {@return its range; without ends where the style has none} */
    public StyleRange range(StyleQuantity quantity) {
        StyleRange own = RANGES.get(name()).get(quantity);
        return own == null ? RANGES.get("ANY").getOrDefault(quantity, StyleRange.NONE) : own;
    }

    /**
     * Its usual serving temperature (rule of thumb within the range of {@link
     * StyleQuantity#SERVING}).
     *
     * @return °C
     */
    public double servingC() {
        return servingC;
    }

    /**
     * How long it is usually kept (rule of thumb).
     *
     * @return days; 0 if it is eaten at once
     */
    public double keptDays() {
        return keptDays;
    }

    /** {@return how it is eaten} */
    public Eaten eaten() {
        return eaten;
    }

    /** {@return the names by law that it claims, of which a batch may bear some} */
    public Set<String> claims() {
        return switch (this) {
            case CUSTARD -> Set.of("frozen custard", "ice cream", "Cremeeis");
            case ICE_CREAM, ADULT -> Set.of("ice cream", "dairy ice cream", "Eiscreme", "Rahmeis");
            case MILK_ICE, FROZEN_YOGURT, SOFT_SERVE, LOW_SUGAR -> Set.of("ice cream", "Milcheis");
            case SORBET, GRANITA, LOLLY -> Set.of("water ice", "Sorbet", "Fruchteis", "Wassereis");
            case SHERBET, VEGAN -> Set.of();
        };
    }

    /** {@return whether its crystals must be too small to be felt} */
    public boolean smooth() {
        return eaten == Eaten.SCOOPED || eaten == Eaten.AT_ONCE;
    }

    /**
     * Finds a style by its name.
     *
     * @param words such as {@code sorbet} or {@code soft serve}
     * @return the style
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Style named(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]+", " ");
        for (Style style : values()) {
            if (style.words().replace('-', ' ').equals(plain)
                    || style.name().toLowerCase(Locale.ROOT).replace('_', ' ').equals(plain)) {
                return style;
            }
        }
        throw Require.fault(
                "science.style",
                "fault.style",
                words.strip(),
                Arrays.stream(values()).map(Style::words).toList());
    }

    private static Map<String, Map<StyleQuantity, StyleRange>> read() {
        Map<String, Map<StyleQuantity, StyleRange>> all = new HashMap<>();
        for (Style style : values()) {
            all.put(style.name(), new EnumMap<>(StyleQuantity.class));
        }
        all.put("ANY", new EnumMap<>(StyleQuantity.class));
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get();
        try (InputStream in = Style.class.getResourceAsStream("styles.csv");
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            for (CSVRecord row : format.parse(reader)) {
                StyleRange range =
                        new StyleRange(
                                end(row.get("least"), Double.NEGATIVE_INFINITY),
                                end(row.get("most"), Double.POSITIVE_INFINITY),
                                row.get("source"));
                all.get(row.get("style")).put(StyleQuantity.valueOf(row.get("quantity")), range);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private static double end(String text, double none) {
        return text.isEmpty() ? none : Double.parseDouble(text);
    }
}
