package coldwright.batch;

import coldwright.science.crystal.Method;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Freezing and storage conditions of a batch, as typed.
 *
 * @param method the freezing method
 * @param fields the typed fields; a missing field is empty
 */
public record FreezingSetup(Method method, Map<SetupField, Typed<Double>> fields) {
    /** A smaller mass takes as long as an egg cup full, g: common practice, no source. */
    public static final double LEAST_TIMED_G = 50;

    /** Ice for each gram of batch if no bath is stated, g: common practice, no source. */
    public static final double ICE_PER_BATCH = 3;

    /** Salt for each gram of ice if no bath is stated, g: common practice, no source. */
    public static final double SALT_PER_ICE = 0.25;

    /**
     * Ice and salt in a recipe file.
     *
     * @param iceG mass of ice, g
     * @param saltG mass of salt, g
     */
    public record Bath(double iceG, double saltG) {}

    /** A tub in a home freezer, no air. */
    static final FreezingSetup TUB =
            new FreezingSetup(Method.STILL_TUB, Map.of())
                    .with(SetupField.FREEZER, "-18")
                    .with(SetupField.AIR, "0");

    /** A flat bag in ice and salt, a home freezer, no air. */
    public static final FreezingSetup USUAL = TUB.by(Method.BAG);

    /** What a recipe file calls each method; the first of its words is written. */
    private static final Map<Method, List<String>> METHODS =
            Map.of(
                    Method.BAG, List.of("bag"),
                    Method.MACHINE, List.of("churn", "machine"),
                    Method.SHAKEN_TUB, List.of("shaken", "shaken tub"),
                    Method.STILL_TUB, List.of("tub", "still tub"));

    public FreezingSetup {
        Map<SetupField, Typed<Double>> copy = new EnumMap<>(SetupField.class);
        copy.putAll(fields);
        copy.values().removeIf(Typed::isBlank);
        fields = Collections.unmodifiableMap(copy);
    }

    /** Whether it freezes in ice and salt, as bag and churn do. */
    public boolean inBath() {
        return method == Method.BAG || method == Method.MACHINE;
    }

    /** What a recipe file calls a method, such as {@code churn}. */
    public static String word(Method method) {
        return METHODS.get(method).get(0);
    }

    /** What a recipe file calls its method. */
    public String methodWord() {
        return word(method);
    }

    /** The same with the method that a recipe file calls so. */
    FreezingSetup by(String word) {
        return METHODS.keySet().stream()
                .filter(one -> METHODS.get(one).contains(word.toLowerCase(Locale.ROOT)))
                .map(this::by)
                .findFirst()
                .orElseThrow(() -> Fault.in("method", word));
    }

    /** The same with another method. */
    public FreezingSetup by(Method is) {
        return new FreezingSetup(is, fields);
    }

    /** The same with another text in a field. */
    public FreezingSetup with(SetupField field, String text) {
        Map<SetupField, Typed<Double>> now = new EnumMap<>(SetupField.class);
        now.putAll(fields);
        now.put(field, field.read(text));
        return new FreezingSetup(method, now);
    }

    /** The same storage time at a steady temperature, never warmed. */
    public FreezingSetup steady() {
        return with(SetupField.SWING, "").with(SetupField.WARM, "").with(SetupField.WARM_FOR, "");
    }

    /** The text typed in a field; empty if there is none. */
    public String text(SetupField field) {
        return fields.containsKey(field) ? fields.get(field).text() : "";
    }

    /** The value of a field; empty if nothing valid is typed. */
    public Optional<Double> value(SetupField field) {
        return Optional.ofNullable(fields.get(field)).flatMap(Typed::value);
    }

    /** Whether all of these fields are typed and valid. */
    boolean has(SetupField... all) {
        return Arrays.stream(all).allMatch(field -> value(field).isPresent());
    }

    /** The fault of a field; empty if there is none. */
    String fault(SetupField field) {
        return fields.containsKey(field) ? fields.get(field).fault() : "";
    }

    /** The first fault of any field; empty if there is none. */
    String fault() {
        return fields.values().stream()
                .map(Typed::fault)
                .filter(fault -> !fault.isEmpty())
                .findFirst()
                .orElse("");
    }
}
