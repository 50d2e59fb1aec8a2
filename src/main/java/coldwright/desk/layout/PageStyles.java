package coldwright.desk.layout;

import javafx.css.PseudoClass;
import javafx.scene.text.Font;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The page's looks: its style sheet, its fonts, and the states that a style sheet can't see. */
public final class PageStyles {
    /** The step in sight. */
    public static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

    /** A step that is done. */
    public static final PseudoClass DONE = PseudoClass.getPseudoClass("done");

    /** The size of the type at 100 %, pixels. */
    public static final double USUAL_EM_PX = 18;

    private static final List<String> FONTS =
            List.of(
                    "LinLibertine_R.otf",
                    "LinLibertine_RI.otf",
                    "LinLibertine_RB.otf",
                    "LinLibertine_RBI.otf",
                    "LinLibertine_DR.otf",
                    "Lato-Regular.ttf",
                    "mononoki-Regular.ttf",
                    "mononoki-Bold.ttf");

    private PageStyles() {}

    /** The size of the type for a room: what fits some 28 lines into the window's height. */
    public static double classroomEmPx(double widthPx, double heightPx) {
        double byHeight = heightPx / 36;
        double byWidth = widthPx / 46;
        return Math.max(USUAL_EM_PX, Math.min(byHeight, byWidth));
    }

    /** Makes the fonts known; only the first call does anything. */
    public static void loadFonts() {
        Fonts.load();
    }

    /** Where the style sheets are: the page's own, and that of its plates. */
    public static List<String> sheets() {
        return Stream.of("page.css", "figure.css").map(PageStyles::sheet).toList();
    }

    private static String sheet(String name) {
        URL url = PageStyles.class.getResource("/coldwright/desk/" + name);
        return Objects.requireNonNull(url, name).toExternalForm();
    }

    private static final class Fonts {
        static {
            for (String name : FONTS) {
                try (InputStream in =
                        PageStyles.class.getResourceAsStream("/coldwright/fonts/" + name)) {
                    Font.loadFont(in, USUAL_EM_PX);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }

        static void load() {}
    }
}
