package coldwright.desk.brew.model;

import coldwright.batch.Stored;

/**
 * How a batch is kept, as typed.
 *
 * @param days for how many days; empty if nothing is said of it
 * @param swingC how far the freezer swings up and down, °C; empty for not at all
 * @param warmC to what temperature it was once warmed, °C; empty for never
 * @param warmHours for how many hours
 */
public record Store(String days, String swingC, String warmC, String warmHours) {
    /** Nothing is said of it. */
    public static final Store UNSAID = new Store("", "", "", "");

    /** As a batch file states it. */
    static Store of(Stored stored) {
        return new Store(
                Typed.number(stored.days()),
                stored.swingC() > 0 ? Typed.number(stored.swingC()) : "",
                stored.warmed().map(one -> Typed.number(one.temperatureC())).orElse(""),
                stored.warmed().map(one -> Typed.number(one.hours())).orElse(""));
    }

    /** The same for so many days. */
    public Store forDays(String newDays) {
        return new Store(newDays, swingC, warmC, warmHours);
    }

    /** The same with another swing. */
    public Store swinging(String newSwingC) {
        return new Store(days, newSwingC, warmC, warmHours);
    }

    /** The same warmed to another temperature. */
    public Store warmedTo(String newWarmC) {
        return new Store(days, swingC, newWarmC, warmHours);
    }

    /** The same warmed for another time. */
    public Store warmedFor(String newWarmHours) {
        return new Store(days, swingC, warmC, newWarmHours);
    }

    /** As long, in a freezer that does not swing, and never warmed. */
    public Store steady() {
        return new Store(days, "", "", "");
    }

    /** Whether anything is said of it. */
    boolean said() {
        return !days.isBlank();
    }

    /** Its line in the head of a batch file; none as long as no days are said. */
    String head() {
        if (!said()) {
            return "";
        }
        return "stored: "
                + Means.unit(days, "days")
                + (swingC.isBlank() ? "" : ", swinging " + Means.unit(swingC, "°C"))
                + (warmC.isBlank() || warmHours.isBlank()
                        ? ""
                        : ", warmed to %s for %s"
                                .formatted(Means.unit(warmC, "°C"), Means.unit(warmHours, "h")))
                + "\n";
    }
}
