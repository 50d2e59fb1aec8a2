package coldwright.print;

import static coldwright.print.MakeSheetText.word;

import coldwright.batch.BatchAnalysis;
import coldwright.figure.Figure;
import coldwright.paint.FigureFiles;
import coldwright.paint.style.FigureFormat;
import coldwright.science.mix.Amount;
import coldwright.text.DisplayText;
import coldwright.words.Words;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A batch as one sheet for the kitchen: amounts, method with temperatures and times, what to buy,
 * ice and salt, cautions, allergens and the freezing curve, in the language shown.
 */
public final class MakeSheet {
    private static final FigureFormat CURVE = FigureFormat.of(420, 250).withType(14);
    private static final double COLDEST_C = -30;

    private final BatchAnalysis all;
    private final StringBuilder html = new StringBuilder();

    private MakeSheet(BatchAnalysis all) {
        this.all = all;
    }

    /** A sheet's file and its number of pages; a usual batch needs one. */
    @SuppressWarnings("ArrayRecordComponent")
    public record Pages(byte[] bytes, int pages) {}

    /** Writes the sheet as an HTML file, which is also well-formed XML. */
    public static String html(BatchAnalysis all, PaperSize paper) {
        return html(all, paper, HandoutStyle.MAKE);
    }

    private static String html(BatchAnalysis all, PaperSize paper, HandoutStyle handoutStyle) {
        return new MakeSheet(all).whole(paper, handoutStyle);
    }

    /** Writes the sheet as PDF, in smaller type if it would not fit on one page, or as HTML. */
    public static Pages file(BatchAnalysis all, PaperSize paper, boolean pdf) {
        if (!pdf) {
            return new Pages(html(all, paper).getBytes(StandardCharsets.UTF_8), 1);
        }
        Pages usual = pages(html(all, paper, HandoutStyle.MAKE));
        if (usual.pages() == 1) {
            return usual;
        }
        Pages tight = pages(html(all, paper, HandoutStyle.MAKE_TIGHT));
        return tight.pages() < usual.pages() ? tight : usual;
    }

    private static Pages pages(String html) {
        byte[] bytes = PdfWriter.of(html);
        return new Pages(bytes, PdfWriter.pageCount(bytes));
    }

    private String whole(PaperSize paper, HandoutStyle handoutStyle) {
        String title = HtmlMarkup.escaped(all.batch().name());
        html.append("<header>\n<h1>%s</h1>\n<p class=\"about\">".formatted(title));
        html.append(HtmlMarkup.line(about())).append("</p>\n</header>\n<div class=\"two\">\n");
        side("amounts");
        amounts();
        html.append("</section>\n");
        side("curve");
        html.append("<figure>%s</figure>\n</section>\n</div>\n<section>\n".formatted(svg()));
        heading("method");
        list("ol", "steps", MakeSteps.of(all));
        html.append("</section>\n<div class=\"two\">\n");
        side("buy");
        list("ul", "boxes", ShoppingList.toBuy(all));
        html.append("</section>\n<section class=\"side\">\n");
        List<String> bath = ShoppingList.iceAndSalt(all);
        if (!bath.isEmpty()) {
            heading("bath");
            list("ul", "boxes", bath);
            fine(ShoppingList.leastBath(all));
        }
        heading("tools");
        list("ul", "boxes", ShoppingList.tools(all));
        html.append("</section>\n</div>\n<section class=\"cautions\">\n");
        heading("cautions");
        list("ul", "warned", MakeCautions.of(all));
        String allergens = DisplayText.sentence(all.report().declarations().get(0).shown());
        html.append(
                "<p><b>%s</b> %s</p>\n</section>\n"
                        .formatted(word("allergens"), HtmlMarkup.line(allergens)));
        return handoutStyle.page(title, paper, html.toString());
    }

    private void side(String heading) {
        html.append("<section class=\"side\">\n");
        heading(heading);
    }

    private void heading(String key) {
        html.append("<h2>%s</h2>\n".formatted(word("heading." + key)));
    }

    private void fine(String sentence) {
        html.append("<p class=\"fine\">%s</p>\n".formatted(HtmlMarkup.line(sentence)));
    }

    private String about() {
        double airPercent = all.batch().airPercent();
        return word(
                "about",
                MakeSheetText.rounded(all.mix().massG()),
                all.report().fact("volume_with_air_l").number(),
                airPercent > 0 ? word("about.air", airPercent) : "",
                word("about." + all.batch().setup().methodWord()));
    }

    private void amounts() {
        html.append(
                "<table>\n<thead><tr><th scope=\"col\">%s</th><th scope=\"col\">%s</th><th scope=\"col\">%s</th></tr></thead>\n<tbody>\n"
                        .formatted(word("ingredient"), Words.units().unit("g"), word("spooned")));
        boolean spooned = false;
        for (Amount amount : IngredientHandling.of(all.mix()).amounts()) {
            Optional<String> spoons = SpoonText.of(amount);
            spooned |= spoons.isPresent();
            html.append(
                    "<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td></tr>\n"
                            .formatted(
                                    HtmlMarkup.line(amount.ingredient().phrase().shown()),
                                    MakeSheetText.mass(amount.massG()),
                                    HtmlMarkup.line(spoons.orElse(word("weigh")))));
        }
        html.append(
                "<tr class=\"sum\"><th scope=\"row\">%s</th><td>%s</td><td></td></tr>\n</tbody>\n</table>\n"
                        .formatted(word("together"), MakeSheetText.mass(all.mix().massG())));
        if (spooned) {
            fine(word("spoons"));
        }
    }

    private void list(String tag, String look, List<String> lines) {
        html.append("<%s class=\"%s\">\n".formatted(tag, look));
        String box = look.equals("boxes") ? "<span class=\"box\">\u00A0</span> " : "";
        for (String line : lines) {
            html.append(
                    "<li>%s%s</li>\n"
                            .formatted(
                                    box,
                                    HtmlMarkup.line(line)
                                            .replaceAll("\\*\\*([^*]+)\\*\\*", "<b>$1</b>")));
        }
        html.append("</%s>\n".formatted(tag));
    }

    private String svg() {
        String svg = FigureFiles.svg(curve(), CURVE);
        return svg.substring(svg.indexOf("<svg"));
    }

    private Figure curve() {
        return Figure.of(
                        word("curve.title", all.report().fact("initial_freezing_point_c").number()))
                .x(word("curve.temperature"), "°C")
                .y(word("curve.ice"), "%")
                .xBetween(COLDEST_C, 0)
                .yBetween(0, 100)
                .line(word("curve.line"), COLDEST_C, 0, all.curve()::icePercentAt)
                .markX(word("curve.serve"), all.preview().servingC())
                .markX(word("curve.store"), all.batch().freezerC());
    }

    /** A name for the sheet's file, letters, digits and hyphens, without an ending. */
    public static String fileName(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT)
                        .codePoints()
                        .mapToObj(c -> Character.isLetterOrDigit(c) ? Character.toString(c) : "-")
                        .collect(Collectors.joining())
                        .replaceAll("-+", "-")
                        .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "make-sheet" : plain + "-make-sheet";
    }
}
