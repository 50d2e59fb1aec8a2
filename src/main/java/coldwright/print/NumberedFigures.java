package coldwright.print;

import static coldwright.print.HtmlMarkup.text;

import coldwright.figure.Drawing;
import coldwright.figure.DrawingDescription;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.EmptyAxes;
import coldwright.paint.FigureFiles;
import coldwright.paint.style.FigureFormat;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Figures and drawings with captions, numbered in order. */
final class NumberedFigures {
    private static final FigureFormat FIGURE = FigureFormat.of(680, 400);
    private static final FigureFormat DRAWING = FigureFormat.of(680, 520);

    /** Small enough for three side by side, with legible letters. */
    private static final FigureFormat MOMENT = FigureFormat.of(320, 272);

    /** The most rows of a long curve in a printed table. */
    private static final int MOST_ROWS = 24;

    private static final int DIGITS = 4;

    /** The sheet of figures: what fits beside margins and heading on A4 and on letter paper. */
    private static final double SHEET_WIDE_MM = 160;

    private static final double SHEET_HIGH_MM = 190;
    private static final double SHEET_GAP_MM = 3;

    /** Height by width of a picture. */
    private static final double FLATTEST = 0.62;

    private static final double TALLEST = 0.9;

    /** Letters are 2 mm high, however small the picture. */
    private static final double SHEET_PX_PER_MM = 6.2;

    private final SourceNotes notes;
    private final boolean data;
    private int count;
    private int pictures;

    NumberedFigures(SourceNotes notes, boolean data) {
        this.notes = notes;
        this.data = data;
    }

    String html(Exhibit exhibit) {
        count++;
        String marks = exhibit.sources().stream().map(notes::mark).collect(Collectors.joining(" "));
        if (exhibit instanceof Figure figure) {
            return framed("figure", svg(figure, 0, FIGURE), caption(figure), marks)
                    + (data ? table(figure) : "");
        }
        if (exhibit instanceof Drawing drawing) {
            List<Integer> moments = FigureFiles.moments(drawing);
            FigureFormat sheet = moments.size() > 1 ? MOMENT : DRAWING;
            String panels =
                    moments.stream()
                            .map(i -> svg(drawing, i, sheet))
                            .map("<div class=\"moment\">%s</div>"::formatted)
                            .collect(Collectors.joining());
            String name = moments.size() > 1 ? "moments" : "drawing";
            return framed(name, panels, caption(drawing, moments), marks);
        }
        throw new AssertionError(exhibit.getClass());
    }

    /**
     * All figures on one page, in two to six columns; of a drawing that changes the first and the
     * last moment.
     */
    String sheet(List<Exhibit> all) {
        record Picture(Exhibit exhibit, int moment) {}
        List<Picture> pictures = new ArrayList<>();
        for (Exhibit one : all) {
            List<Integer> moments = FigureFiles.moments(one);
            pictures.add(new Picture(one, 0));
            if (moments.size() > 1) {
                pictures.add(new Picture(one, moments.get(moments.size() - 1)));
            }
        }
        int columns = 2;
        while (columns < 6 && highMm(pictures.size(), columns) < FLATTEST * wideMm(columns)) {
            columns++;
        }
        double highMm = Math.min(TALLEST * wideMm(columns), highMm(pictures.size(), columns));
        FigureFormat format =
                FigureFormat.of(
                        (int) (wideMm(columns) * SHEET_PX_PER_MM),
                        (int) (highMm * SHEET_PX_PER_MM));
        String size =
                String.format(
                        Locale.ROOT, "width: %.1fmm; height: %.1fmm", wideMm(columns), highMm);
        return pictures.stream()
                .map(
                        one ->
                                "<div class=\"cell\" style=\"%s\">%s</div>\n"
                                        .formatted(
                                                size,
                                                svg(one.exhibit(), one.moment(), format)
                                                        .replaceFirst(
                                                                "<svg ",
                                                                "<svg style=\"" + size + "\" ")))
                .collect(Collectors.joining("", "<div class=\"sheet\">\n", "</div>\n"));
    }

    private static double wideMm(int columns) {
        return SHEET_WIDE_MM / columns - SHEET_GAP_MM;
    }

    private static double highMm(int pictures, int columns) {
        return SHEET_HIGH_MM / Math.ceil(pictures / (double) columns) - SHEET_GAP_MM;
    }

    /** A figure's empty axes, without a number, to draw on. */
    String empty(Figure axes) {
        return "<figure class=\"empty\">\n%s\n</figure>\n".formatted(svg(axes, 0, FIGURE));
    }

    /** The axes of a figure. */
    static Figure frame(Figure figure) {
        return EmptyAxes.of(figure, FIGURE);
    }

    private String framed(String name, String picture, String caption, String marks) {
        return "<figure class=\"%s\">\n%s\n<figcaption><b>%s</b> %s%s</figcaption>\n</figure>\n"
                .formatted(name, picture, text("figure", count), HtmlMarkup.line(caption), marks);
    }

    /** Title and axes as alternative text. */
    private static String caption(Figure figure) {
        String x = figure.x().caption();
        String y = figure.y().caption();
        return x.isBlank() || y.isBlank()
                ? figure.title() + "."
                : text(
                        "axes",
                        figure.title(),
                        y.substring(0, 1).toUpperCase(Locale.ROOT) + y.substring(1),
                        x);
    }

    private static String caption(Drawing drawing, List<Integer> moments) {
        String times =
                moments.stream()
                        .map(i -> DrawingDescription.time(drawing, i))
                        .filter(time -> !time.isEmpty())
                        .collect(Collectors.joining(", "));
        return moments.size() > 1 && !times.isEmpty()
                ? text("after", drawing.title(), times)
                : drawing.title();
    }

    /** The picture with its own element names, because the moments of a drawing share theirs. */
    private String svg(Exhibit exhibit, int moment, FigureFormat format) {
        pictures++;
        String svg = FigureFiles.svg(exhibit, moment, format);
        String own = svg.replaceAll("figure-(?=[0-9a-f]+)", "picture-" + pictures + "-");
        return own.substring(own.indexOf("<svg"));
    }

    private String table(Figure figure) {
        List<CSVRecord> rows = rows(FigureFiles.csv(figure));
        int every = Math.max(1, (int) Math.ceil((rows.size() - 1) / (double) MOST_ROWS));
        String caption = every == 1 ? text("numbers", count) : text("numbers-some", count, every);
        StringBuilder html =
                new StringBuilder("<table>\n<caption>%s</caption>\n<thead><tr>".formatted(caption));
        rows.get(0)
                .forEach(
                        one ->
                                html.append(
                                        "<th scope=\"col\">%s</th>"
                                                .formatted(HtmlMarkup.line(one))));
        html.append("</tr></thead>\n<tbody>\n");
        for (int i = 1; i < rows.size(); i += every) {
            html.append("<tr>");
            rows.get(i).forEach(one -> html.append("<td>%s</td>".formatted(shortened(one))));
            html.append("</tr>\n");
        }
        return html.append("</tbody>\n</table>\n").toString();
    }

    /** A number to four digits; any other text unchanged. */
    private static String shortened(String text) {
        if (!text.matches("-?\\d+\\.?\\d*([eE][-+]?\\d{1,3})?")) {
            return HtmlMarkup.line(text);
        }
        BigDecimal number = new BigDecimal(text).round(new MathContext(DIGITS));
        boolean zero = number.signum() == 0;
        return zero ? "0" : number.stripTrailingZeros().toPlainString().replace('-', '−');
    }

    private static List<CSVRecord> rows(String csv) {
        try {
            return CSVFormat.DEFAULT.parse(new StringReader(csv)).getRecords();
        } catch (IOException e) {
            throw new AssertionError("reading from memory failed", e);
        }
    }
}
