package coldwright.workbook.settings;

import static coldwright.workbook.entry.WorkbookText.refusal;

import java.util.stream.Stream;

/**
 * Place and size of the window, in logical pixels of the desktop; each side is 1 to 100,000. If it
 * is maximised, this is its place and size before that.
 */
public record WindowPlace(int x, int y, int width, int height, boolean maximised) {
    private static final String MAXIMISED = " maximised";
    private static final int MOST_PX = 100_000;

    /** Refuses a size outside its range. */
    public WindowPlace {
        if (width < 1 || width > MOST_PX || height < 1 || height > MOST_PX) {
            throw refusal("window.size", width, height, MOST_PX);
        }
    }

    /** A line of the settings file, such as {@code 40 30 1280 800}, which {@link #read} reads. */
    String text() {
        return "%s %s %s %s%s".formatted(x, y, width, height, maximised ? MAXIMISED : "");
    }

    static WindowPlace read(String text) {
        if (!text.matches("(-?\\d{1,6} ){2}\\d{1,6} \\d{1,6}(" + MAXIMISED + ")?")) {
            throw refusal("window.unfit", text);
        }
        int[] all = Stream.of(text.split(" ")).limit(4).mapToInt(Integer::parseInt).toArray();
        return new WindowPlace(all[0], all[1], all[2], all[3], text.endsWith(MAXIMISED));
    }
}
