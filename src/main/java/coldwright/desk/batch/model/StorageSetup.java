package coldwright.desk.batch.model;

import coldwright.batch.StorageConditions;

/**
 * How a batch is kept, as typed.
 *
 * @param days for how many days; empty if nothing is said of it
 * @param swingC how far the freezer swings up and down, °C; empty for not at all
 * @param warmC to what temperature it was once warmed, °C; empty for never
 * @param warmHours for how many hours
 */
public record StorageSetup(String days, String swingC, String warmC, String warmHours) {
    /** Nothing is said of it. */
    public static final StorageSetup UNSPECIFIED = new StorageSetup("", "", "", "");

    /** As a batch file states it. */
    static StorageSetup of(StorageConditions storageConditions) {
        return new StorageSetup(
                TypedAmount.number(storageConditions.days()),
                storageConditions.swingC() > 0
                        ? TypedAmount.number(storageConditions.swingC())
                        : "",
                storageConditions
                        .warmed()
                        .map(one -> TypedAmount.number(one.temperatureC()))
                        .orElse(""),
                storageConditions.warmed().map(one -> TypedAmount.number(one.hours())).orElse(""));
    }

    /** The same for so many days. */
    public StorageSetup forDays(String newDays) {
        return new StorageSetup(newDays, swingC, warmC, warmHours);
    }

    /** The same with another swing. */
    public StorageSetup swinging(String newSwingC) {
        return new StorageSetup(days, newSwingC, warmC, warmHours);
    }

    /** The same warmed to another temperature. */
    public StorageSetup warmedTo(String newWarmC) {
        return new StorageSetup(days, swingC, newWarmC, warmHours);
    }

    /** The same warmed for another time. */
    public StorageSetup warmedFor(String newWarmHours) {
        return new StorageSetup(days, swingC, warmC, newWarmHours);
    }

    /** As long, in a freezer that does not swing, and never warmed. */
    public StorageSetup steady() {
        return new StorageSetup(days, "", "", "");
    }

    /** Whether anything is said of it. */
    boolean isSpecified() {
        return !days.isBlank();
    }

    /** Its line in the head of a batch file; none as long as no days are said. */
    String head() {
        if (!isSpecified()) {
            return "";
        }
        return "stored: "
                + FreezingSetup.unit(days, "days")
                + (swingC.isBlank() ? "" : ", swinging " + FreezingSetup.unit(swingC, "°C"))
                + (warmC.isBlank() || warmHours.isBlank()
                        ? ""
                        : ", warmed to %s for %s"
                                .formatted(
                                        FreezingSetup.unit(warmC, "°C"),
                                        FreezingSetup.unit(warmHours, "h")))
                + "\n";
    }
}
