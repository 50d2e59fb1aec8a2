package coldwright.lesson;

import static coldwright.lesson.FaultList.require;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something that a kitchen trial needs, from a line such as {@code kit: 60 g sugar for 4}.
 *
 * @param amount how much for one group, above 0
 * @param unit {@code g}, {@code mL} or {@code pieces} for what is bought; {@code min} for working
 *     time; empty for equipment
 * @param name what it is
 * @param learners how many learners share it; 0 for the whole class
 * @param roughly whether the trial leaves the amount to the cook
 */
public record KitItem(double amount, String unit, String name, int learners, boolean roughly) {
    private static final Pattern LINE =
            Pattern.compile(
                    "kit:\\s*(about )?(\\d{1,6}(?:\\.\\d+)?) (?:(g|mL|pieces|min) )?(.{1,80}) for (class|[1-9]\\d?)");

    /** Reads a line that begins with {@code kit:}; refuses one that isn't such a line. */
    static KitItem read(String line) {
        Matcher found = LINE.matcher(line);
        require(found.matches() && Double.parseDouble(found.group(2)) > 0, "kit", line);
        String learners = found.group(5);
        return new KitItem(
                Double.parseDouble(found.group(2)),
                Optional.ofNullable(found.group(3)).orElse(""),
                found.group(4),
                learners.equals("class") ? 0 : Integer.parseInt(learners),
                found.group(1) != null);
    }

    /** Whether it is the same thing, in whatever amount. */
    public boolean isLike(KitItem other) {
        return unit.equals(other.unit) && name.equals(other.name);
    }

    /** How many times it is needed for so many learners. */
    public int times(int allLearners) {
        return learners == 0 ? 1 : (allLearners + learners - 1) / learners;
    }
}
