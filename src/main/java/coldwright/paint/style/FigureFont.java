package coldwright.paint.style;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * A font for figures at one size: Linux Libertine for titles, as in the page, and Lato for
 * everything else, because its digits all have the same width.
 *
 * <p>Widths are measured independently of the screen's scale, so that a layout is the same on every
 * screen.
 */
public record FigureFont(Font font) {
    private static final Font LATO = load("/coldwright/fonts/Lato-Regular.ttf");
    private static final Font LIBERTINE = load("/coldwright/fonts/LinLibertine_R.otf");
    private static final FontRenderContext EXACT =
            new FontRenderContext(new AffineTransform(), true, true);
    private static final Pattern NOT_SHOWN = Pattern.compile("[\\p{Cc}\\p{Cs}\\uFFFE\\uFFFF]");
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final String CUT = "…";

    /** Cached widths: the same texts recur whenever a dial turns. */
    private static final Map<Measured, Double> WIDTHS = new ConcurrentHashMap<>();

    private static final int MOST_WIDTHS = 4_000;

    /** A text in a font. */
    private record Measured(Font font, String text) {}

    public static FigureFont of(double px) {
        return new FigureFont(LATO.deriveFont((float) px));
    }

    /** The font of titles, at a size that looks as large as the plain font. */
    public static FigureFont ofTitles(double px) {
        return new FigureFont(LIBERTINE.deriveFont((float) px));
    }

    private static Font load(String resource) {
        BundledFonts.useIfAwtFails();
        try (InputStream in = FigureFont.class.getResourceAsStream(resource)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IllegalStateException(resource + " can't be read as a font", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** This font, or one that falls back on the system's for missing letters. */
    private Font fontFor(String text) {
        return font.canDisplayUpTo(text) < 0
                ? font
                : new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(font.getSize2D());
    }

    public double size() {
        return font.getSize2D();
    }

    public double width(String text) {
        if (WIDTHS.size() >= MOST_WIDTHS) {
            WIDTHS.clear();
        }
        return WIDTHS.computeIfAbsent(new Measured(font, text), FigureFont::measured);
    }

    private static double measured(Measured one) {
        String shown = shown(one.text());
        Font font = new FigureFont(one.font()).fontFor(shown);
        return shown.isEmpty() ? 0 : font.getStringBounds(shown, EXACT).getWidth();
    }

    /** The text without what can't be drawn or be in XML: control codes, lone surrogates. */
    public static String shown(String text) {
        return text.chars().allMatch(c -> c >= ' ' && c < 0x7F)
                ? text
                : NOT_SHOWN.matcher(text).replaceAll(" ");
    }

    /** Draws a line of text with its base line at y. */
    public void set(Graphics2D g, String text, double x, double y) {
        String shown = shown(text);
        if (!shown.isEmpty()) {
            g.setFont(fontFor(shown));
            g.drawString(shown, (float) x, (float) y);
        }
    }

    /** Breaks a text into lines between words; text that doesn't fit the last line is cut off. */
    public List<String> wrapped(String text, double width, int mostLines) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : SPACE.splitAsStream(text.strip()).toList()) {
            if (!line.isEmpty() && width(line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        if (lines.size() > mostLines) {
            String rest = String.join(" ", lines.subList(mostLines - 1, lines.size()));
            lines = new ArrayList<>(lines.subList(0, mostLines - 1));
            lines.add(rest);
        }
        lines.replaceAll(one -> cut(one, width));
        return lines;
    }

    /** A text shortened to a width if necessary. */
    public String cut(String text, double width) {
        if (width(text) <= width) {
            return text;
        }
        int fits = 0;
        int tooMany = text.length();
        while (fits < tooMany - 1) {
            int middle = (fits + tooMany) / 2;
            if (width(text.substring(0, middle) + CUT) <= width) {
                fits = middle;
            } else {
                tooMany = middle;
            }
        }
        if (fits > 0 && Character.isHighSurrogate(text.charAt(fits - 1))) {
            fits--;
        }
        return text.substring(0, fits).stripTrailing() + CUT;
    }
}
