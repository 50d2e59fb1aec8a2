package coldwright.figure;

import java.util.Objects;
import java.util.function.Consumer;

/**
 * The page that a snippet's figures go to.
 *
 * <p>In the bench the page is the stream back to the window; in plain Java code nobody looks until
 * somebody says where figures shall go.
 */
public final class Page {
    private static volatile Consumer<Figure> reader = figure -> {};

    private Page() {}

    /**
     * Puts a figure on the page.
     *
     * @param figure what to show
     */
    public static void show(Figure figure) {
        reader.accept(Objects.requireNonNull(figure, "figure"));
    }

    /**
     * Says where figures go from now on.
     *
     * @param newReader takes each figure shown
     */
    public static void readBy(Consumer<Figure> newReader) {
        reader = Objects.requireNonNull(newReader, "newReader");
    }
}
