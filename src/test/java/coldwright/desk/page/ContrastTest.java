package coldwright.desk.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.paint.Color;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The inks of the style sheet against what they stand on, as WCAG 2.1 reckons it. */
class ContrastTest {
    /** WCAG 2.1, success criterion 1.4.3, level AA, for text of usual size. */
    private static final double LEAST_RATIO = 4.5;

    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, paper-edge",
        "ink, slip",
        "ink, warm-tint",
        "ink, cold-tint",
        "quiet-ink, paper",
        "quiet-ink, paper-edge",
        "quiet-ink, slip",
        "quiet-ink, cold-tint",
        "cold, paper",
        "cold, paper-edge",
        "cold, slip",
        "cold, cold-tint",
        "warm, paper",
        "warm, warm-tint",
        "java-keyword, slip",
        "java-type, slip",
        "java-constant, slip",
        "java-number, slip",
        "java-string, slip",
        "java-comment, slip",
        "java-dial, slip",
        "java-keyword, warm-tint",
        "java-constant, warm-tint",
        "java-number, warm-tint",
        "java-string, warm-tint",
        "java-comment, warm-tint"
    })
    void isEnoughToRead(String ink, String ground) throws IOException {
        double ratio = ratio(color(ink), color(ground));
        assertTrue(
                ratio >= LEAST_RATIO,
                "%s on %s has a contrast of %.2f; it must have %s"
                        .formatted(ink, ground, ratio, LEAST_RATIO));
    }

    private static Color color(String name) throws IOException {
        String sheet;
        try (InputStream in = ContrastTest.class.getResourceAsStream("/coldwright/desk/page.css")) {
            sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Pattern place =
                name.startsWith("java-")
                        ? Pattern.compile("\\." + name + " \\{ -fx-fill: (#[0-9a-f]{6})")
                        : Pattern.compile("\\n    " + name + ": (#[0-9a-f]{6});");
        Matcher found = place.matcher(sheet);
        assertTrue(found.find(), name + " is no colour of the style sheet");
        return Color.web(found.group(1));
    }

    private static double ratio(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed())
                + 0.7152 * linear(color.getGreen())
                + 0.0722 * linear(color.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
