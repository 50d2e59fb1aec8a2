package coldwright.desk.batch.model;

import coldwright.batch.RecipeFile.Method;

import java.util.Locale;

/**
 * What a batch is frozen with, as typed.
 *
 * @param method how
 * @param iceG ice of the bath, g, as typed; empty to have it taken by the batch's weight
 * @param saltG salt of the bath, g, as typed
 * @param freezerC the freezer's temperature, °C, as typed; empty for −18
 * @param airPercent how much the volume grows by air, %, as typed; empty for none
 * @param store how it is kept afterwards
 */
public record FreezingSetup(
        Method method,
        String iceG,
        String saltG,
        String freezerC,
        String airPercent,
        StorageSetup store) {
    /** A flat bag in ice and salt, a home freezer, no air. */
    public static final FreezingSetup USUAL =
            new FreezingSetup(Method.BAG, "", "", "-18", "0", StorageSetup.UNSPECIFIED);

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
        return new FreezingSetup(is, iceG, saltG, freezerC, airPercent, store);
    }

    /** The same with another bath. */
    public FreezingSetup bath(String newIceG, String newSaltG) {
        return new FreezingSetup(method, newIceG, newSaltG, freezerC, airPercent, store);
    }

    /** The same with another freezer. */
    public FreezingSetup freezer(String newFreezerC) {
        return new FreezingSetup(method, iceG, saltG, newFreezerC, airPercent, store);
    }

    /** The same with other air. */
    public FreezingSetup air(String newAirPercent) {
        return new FreezingSetup(method, iceG, saltG, freezerC, newAirPercent, store);
    }

    /** The same kept otherwise. */
    public FreezingSetup kept(StorageSetup newStore) {
        return new FreezingSetup(method, iceG, saltG, freezerC, airPercent, newStore);
    }

    /** Its lines in the head of a batch file. */
    String head() {
        StringBuilder head = new StringBuilder();
        head.append("method: ").append(method.name().toLowerCase(Locale.ROOT)).append('\n');
        if (!iceG.isBlank() && !saltG.isBlank()) {
            head.append("bath: ice %s, salt %s%n".formatted(grams(iceG), grams(saltG)));
        }
        if (!freezerC.isBlank()) {
            head.append("freezer: ").append(unit(freezerC, "°C")).append('\n');
        }
        if (!airPercent.isBlank()) {
            head.append("air: ").append(unit(airPercent, "%")).append('\n');
        }
        head.append(store.head());
        return head.toString().replace("\r", "");
    }

    private static String grams(String typed) {
        return unit(typed, "g");
    }

    static String unit(String typed, String unit) {
        String text = typed.strip();
        return Character.isDigit(text.charAt(text.length() - 1)) ? text + " " + unit : text;
    }
}
