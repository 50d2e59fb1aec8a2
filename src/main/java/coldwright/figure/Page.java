package coldwright.figure;

import java.util.Objects;
import java.util.function.Consumer;

/**
 * The page that a snippet's figures go to.
 *
 * <p>In the bench the page is the stream back to the window; elsewhere, figures are dropped until
 * {@link #readBy} sets a reader.
 */
public final class Page {
    private static volatile Consumer<Exhibit> reader = exhibit -> {};

    private Page() {}

    /** Puts a figure or a drawing on the page. */
    public static void show(Exhibit exhibit) {
        reader.accept(Objects.requireNonNull(exhibit, "exhibit"));
    }

    /** Sets what receives each figure and drawing from now on. */
    public static void readBy(Consumer<Exhibit> newReader) {
        reader = Objects.requireNonNull(newReader, "newReader");
    }
}
