package coldwright.desk.code;

import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/**
 * Measures the height of an editor's wrapped text. Never visible; it is a child of the editor so
 * that it has the editor's type.
 */
final class WrappedHeight extends TextFlow {
    /** Room for rounding, so that a line that just fits isn't wrapped in the editor. */
    private static final double SLACK_PX = 2;

    private final Text line = new Text();
    private LayoutInputs last;
    private double lastPx;

    /** What the height depends on. */
    private record LayoutInputs(String text, double widthPx, Font font) {}

    WrappedHeight() {
        line.getStyleClass().add("text");
        getChildren().add(line);
        setManaged(false);
        setVisible(false);
    }

    /**
     * Height of a text, pixels.
     *
     * @param text any text
     * @param widthPx the available width, pixels
     */
    double of(String text, double widthPx) {
        LayoutInputs layoutInputs = new LayoutInputs(text, widthPx, line.getFont());
        if (!layoutInputs.equals(last)) {
            last = layoutInputs;
            lastPx = px(layoutInputs);
        }
        return lastPx;
    }

    /** Type size, pixels. */
    double emPx() {
        return line.getFont().getSize();
    }

    private double px(LayoutInputs layoutInputs) {
        double one = wrappedPx("x", layoutInputs.widthPx());
        double px = 0;
        for (String words : layoutInputs.text().split("\n", -1)) {
            // the area sets the lines of a wrapped paragraph a pixel apart
            double wrapped = wrappedPx(words, layoutInputs.widthPx());
            px += wrapped + Math.round(wrapped / one) - 1;
        }
        return px;
    }

    private double wrappedPx(String words, double widthPx) {
        line.setText(words);
        return Math.ceil(prefHeight(Math.max(1, widthPx - SLACK_PX)));
    }
}
