package coldwright.desk.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.paint.Color;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The inks of the style sheet against what they stand on, as WCAG 2.1 reckons it. */
class ContrastTest {
    /** WCAG 2.1, success criterion 1.4.3, level AA, for text of usual size. */
    private static final double LEAST_RATIO = 4.5;

    private static final List<String> PAIRS =
            List.of(
                    "ink paper paper-edge slip warm-tint cold-tint picked",
                    "quiet-ink paper paper-edge slip cold-tint warm-tint",
                    "faint-ink slip",
                    "cold paper paper-edge slip cold-tint",
                    "warm paper slip warm-tint",
                    "java-keyword-ink slip warm-tint",
                    "java-constant-ink slip warm-tint",
                    "java-string-ink slip warm-tint",
                    "java-comment-ink slip warm-tint");

    static Stream<Arguments> inksOnGrounds() {
        return Stream.of("", ".dark", ".contrast")
                .flatMap(
                        theme ->
                                PAIRS.stream()
                                        .map(pair -> pair.split(" "))
                                        .flatMap(
                                                names ->
                                                        Stream.of(names)
                                                                .skip(1)
                                                                .map(
                                                                        ground ->
                                                                                Arguments.of(
                                                                                        theme,
                                                                                        names[0],
                                                                                        ground))));
    }

    @ParameterizedTest
    @MethodSource("inksOnGrounds")
    void isEnoughToRead(String theme, String ink, String ground) throws IOException {
        double ratio = ratio(color(theme, ink), color(theme, ground));
        assertTrue(
                ratio >= LEAST_RATIO,
                "%s on %s has a contrast of %.2f in %s; it must have %s"
                        .formatted(ink, ground, ratio, theme, LEAST_RATIO));
    }

    private static Color color(String theme, String name) throws IOException {
        String sheet;
        try (InputStream in = ContrastTest.class.getResourceAsStream("/coldwright/desk/page.css")) {
            sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        String rules = sheet.substring(sheet.indexOf("\n.desk" + theme + " {"));
        Matcher found =
                Pattern.compile("\n    " + name + ": (#[0-9a-f]{6});")
                        .matcher(rules.substring(0, rules.indexOf('}')));
        assertTrue(found.find(), name + " is no colour of the theme " + theme);
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
