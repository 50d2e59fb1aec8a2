package coldwright.batch;

import coldwright.batch.Recipe.Method;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a batch is frozen with and how it is stored, as typed.
 *
 * @param method how
 * @param fields what is typed; a field that is left out is empty
 */
public record FreezingSetup(Method method, Map<SetupField, Typed<Double>> fields) {
    /** A tub in a home freezer, no air. */
    static final FreezingSetup TUB =
            new FreezingSetup(Method.TUB, Map.of())
                    .with(SetupField.FREEZER, "-18")
                    .with(SetupField.AIR, "0");

    /** A flat bag in ice and salt, a home freezer, no air. */
    public static final FreezingSetup USUAL = TUB.by(Method.BAG);

    public FreezingSetup {
        Map<SetupField, Typed<Double>> copy = new EnumMap<>(SetupField.class);
        copy.putAll(fields);
        copy.values().removeIf(Typed::isBlank);
        fields = Collections.unmodifiableMap(copy);
    }

    /**
     * Whether ice and salt freeze it.
     *
     * @return true for bag and churn
     */
    public boolean inBath() {
        return method == Method.BAG || method == Method.CHURN;
    }

    /** The same by another method. */
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

    /** As long in a freezer that does not swing, and never warmed. */
    public FreezingSetup steady() {
        return with(SetupField.SWING, "").with(SetupField.WARM, "").with(SetupField.WARM_FOR, "");
    }

    /**
     * What is typed in a field.
     *
     * @param field which
     * @return empty if nothing is
     */
    public String text(SetupField field) {
        return fields.containsKey(field) ? fields.get(field).text() : "";
    }

    /** What a field means; empty if nothing is typed or it is wrong. */
    Optional<Double> value(SetupField field) {
        return Optional.ofNullable(fields.get(field)).flatMap(Typed::value);
    }

    /** Whether all of these fields are typed, and right. */
    boolean has(SetupField... all) {
        return Arrays.stream(all).allMatch(field -> value(field).isPresent());
    }

    /** What is wrong with a field; empty if nothing is. */
    String fault(SetupField field) {
        return fields.containsKey(field) ? fields.get(field).fault() : "";
    }

    /** What is wrong with the first field that is wrong; empty if nothing is. */
    String fault() {
        return fields.values().stream()
                .map(Typed::fault)
                .filter(fault -> !fault.isEmpty())
                .findFirst()
                .orElse("");
    }
}
