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

/** The page's style sheets, fonts, and pseudo-classes. */
public final class PageStyles {
    /** The step in sight. */
    public static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

    public static final PseudoClass DONE = PseudoClass.getPseudoClass("done");

    /** Type size at 100 %, pixels. */
    public static final double USUAL_EM_PX = 18;

    private static final double LEAST_WIDTH_EM = 28;

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

    /**
     * Type size for a window's width: per cent of the usual one, as far as every page has room for
     * it, which takes 28 ems.
     */
    public static double emPx(int percent, double widthPx) {
        return Math.min(USUAL_EM_PX * percent / 100, widthPx / LEAST_WIDTH_EM);
    }

    /**
     * Type size of the classroom view: some 28 lines fit into the window's height, unless the type
     * of pages is larger.
     */
    public static double classroomEmPx(int percent, double widthPx, double heightPx) {
        double filling = Math.min(heightPx / 36, widthPx / 46);
        return Math.max(filling, Math.max(USUAL_EM_PX, emPx(percent, widthPx)));
    }

    /** Loads the fonts; only the first call has an effect. */
    public static void loadFonts() {
        Fonts.load();
    }

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
