package coldwright.workbook.work;

import static coldwright.workbook.entry.WorkbookText.refusal;

import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;

/** The key of a lesson's work, valid as a file name: 1 to 80 of a to z, digits, - and _. */
public record LessonKey(String name) {
    private static final Pattern FORM = Pattern.compile("[a-z0-9_-]{1,80}");
    private static final Pattern RESERVED =
            Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]|settings|agreed|lock");
    private static final int LONGEST_STEM = 60;
    private static final int HASH_DIGITS = 12;

    /** Refuses a name with other characters. */
    public LessonKey {
        if (!FORM.matcher(name).matches()) {
            throw refusal("key.unfit", name);
        }
    }

    /** The key of a lesson that comes with the program: its name if possible. */
    public static LessonKey ofCourse(String name) {
        return FORM.matcher(name).matches() && !RESERVED.matcher(name).matches()
                ? new LessonKey(name)
                : hashed(name, name);
    }

    /** The key of a user's own lesson file. Files of the same name in two folders have two keys. */
    public static LessonKey ofFile(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Path name = whole.getFileName();
        return hashed(
                name == null ? "lesson" : name.toString().replaceFirst("\\.md$", ""),
                whole.toString());
    }

    private static LessonKey hashed(String name, String whole) {
        String stem = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9_-]+", "-");
        String cut = stem.substring(0, Math.min(LONGEST_STEM, stem.length()));
        return new LessonKey(cut + "-" + ContentHash.of(whole).hex().substring(0, HASH_DIGITS));
    }
}
