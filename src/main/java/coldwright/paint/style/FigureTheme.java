package coldwright.paint.style;

import java.awt.Color;

/** The colours of a figure apart from its data. Files always use the light theme. */
public enum FigureTheme {
    /** White paper, as in files. */
    LIGHT(0xFFFFFF, 0x26292B, 0x53585C, 0x6F7579, 0xB4B9BB, 0xE5E8E8, 0x53585C),
    /** A dark page. */
    DARK(0x202B32, 0xDFE7EA, 0xA3B1B8, 0x8C9AA2, 0x5C6C75, 0x33424B, 0xB7C3C9),
    /** White paper and black ink, for high contrast. */
    CONTRAST(0xFFFFFF, 0x000000, 0x000000, 0x000000, 0x6F7579, 0xC4C9CB, 0x000000);

    private final Color paper;
    private final Color text;
    private final Color quietText;
    private final Color axis;
    private final Color zero;
    private final Color grid;
    private final Color mark;

    FigureTheme(int paper, int text, int quietText, int axis, int zero, int grid, int mark) {
        this.paper = new Color(paper);
        this.text = new Color(text);
        this.quietText = new Color(quietText);
        this.axis = new Color(axis);
        this.zero = new Color(zero);
        this.grid = new Color(grid);
        this.mark = new Color(mark);
    }

    public Color paper() {
        return paper;
    }

    public Color text() {
        return text;
    }

    public Color quietText() {
        return quietText;
    }

    public Color axis() {
        return axis;
    }

    public Color zero() {
        return zero;
    }

    public Color grid() {
        return grid;
    }

    public Color mark() {
        return mark;
    }

    /** The background of a label over data: nearly opaque paper. */
    public Color halo() {
        return new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 215);
    }

    /** A colour blended with the paper. */
    Color paler(Color color, double share) {
        return new Color(
                mixed(color.getRed(), paper.getRed(), share),
                mixed(color.getGreen(), paper.getGreen(), share),
                mixed(color.getBlue(), paper.getBlue(), share));
    }

    private static int mixed(int channel, int ofPaper, double share) {
        return (int) Math.round(ofPaper - (ofPaper - channel) * share);
    }
}
