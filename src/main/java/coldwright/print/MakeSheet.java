package coldwright.print;

import coldwright.batch.BatchAnalysis;
import coldwright.figure.Figure;
import coldwright.paint.FigureFiles;
import coldwright.paint.style.FigureFormat;
import coldwright.science.diagnosis.Situation;
import coldwright.science.mix.Amount;
import coldwright.science.standards.Declarations;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A batch as one sheet for the kitchen: amounts, method with temperatures and times, what to buy,
 * ice and salt, cautions, allergens and the freezing curve. It is in English.
 */
public final class MakeSheet {
    private static final FigureFormat CURVE = FigureFormat.of(420, 250).withType(14);
    private static final double COLDEST_C = -30;

    private final BatchAnalysis all;
    private final StringBuilder html = new StringBuilder();

    private MakeSheet(BatchAnalysis all) {
        this.all = all;
    }

    /**
     * A sheet as pages.
     *
     * @param bytes a PDF file
     * @param pages number of pages; a usual batch needs one
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Pages(byte[] bytes, int pages) {}

    /** Writes the sheet as an HTML file, which is also well-formed XML. */
    public static String html(BatchAnalysis all, PaperSize paper) {
        return html(all, paper, HandoutStyle.MAKE);
    }

    private static String html(BatchAnalysis all, PaperSize paper, HandoutStyle handoutStyle) {
        return new MakeSheet(all).whole(paper, handoutStyle);
    }

    /** Writes the sheet as PDF, in smaller type if it would not fit on one page otherwise. */
    public static Pages pdf(BatchAnalysis all, PaperSize paper) {
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
        html.append(HtmlMarkup.line(about())).append("</p>\n</header>\n");
        html.append("<div class=\"two\">\n<section class=\"side\">\n<h2>Amounts</h2>\n");
        amounts();
        html.append("</section>\n<section class=\"side\">\n<h2>How it freezes</h2>\n");
        html.append("<figure>%s</figure>\n".formatted(svg()));
        html.append("</section>\n</div>\n<section>\n<h2>Method</h2>\n");
        list("ol", "steps", MakeSteps.of(all));
        html.append("</section>\n<div class=\"two\">\n<section class=\"side\">\n");
        html.append("<h2>To buy</h2>\n");
        list("ul", "boxes", ShoppingList.toBuy(all));
        html.append("</section>\n<section class=\"side\">\n");
        List<String> bath = ShoppingList.iceAndSalt(all);
        if (!bath.isEmpty()) {
            html.append("<h2>Ice and salt</h2>\n");
            list("ul", "boxes", bath);
            html.append(
                    "<p class=\"fine\">%s</p>\n"
                            .formatted(HtmlMarkup.line(ShoppingList.leastBath(all))));
        }
        html.append("<h2>To have ready</h2>\n");
        list("ul", "boxes", ShoppingList.tools(all));
        html.append("</section>\n</div>\n<section class=\"cautions\">\n<h2>Cautions</h2>\n");
        list("ul", "warned", MakeCautions.of(all));
        String allergens = DisplayText.sentence(Declarations.allergenSentence(all.mix()));
        html.append("<p><b>Allergens:</b> %s</p>\n".formatted(HtmlMarkup.line(allergens)));
        html.append("</section>\n");
        return handoutStyle.page(title, paper, html.toString());
    }

    private String about() {
        return "Makes %s g, %s L%s. %s. Times and temperatures are calculated, with ranges; taste and thermometer decide."
                .formatted(
                        MakeSheetText.grams(all.mix().massG()),
                        DisplayText.decimals(2, all.air().litres(all.mix())),
                        all.air().percent() > 0
                                ? " with %s %% air"
                                        .formatted(DisplayText.decimals(0, all.air().percent()))
                                : "",
                        switch (all.batch().method()) {
                            case BAG -> "In a bag, in ice and salt";
                            case TUB -> "In a tub, left still";
                            case SHAKEN -> "In a tub, shaken";
                            case CHURN -> "In a churn, in ice and salt";
                        });
    }

    private void amounts() {
        html.append("<table>\n<thead><tr><th scope=\"col\">Ingredient</th>");
        html.append(
                "<th scope=\"col\">g</th><th scope=\"col\">by spoon or cup</th></tr></thead>\n");
        html.append("<tbody>\n");
        List<Amount> used = MakeSteps.used(all.mix());
        for (Amount amount : used) {
            html.append(
                    "<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td></tr>\n"
                            .formatted(
                                    HtmlMarkup.line(amount.ingredient().name()),
                                    MakeSheetText.grams(amount.massG()),
                                    SpoonText.of(amount).map(HtmlMarkup::line).orElse("weigh")));
        }
        html.append(
                "<tr class=\"sum\"><th scope=\"row\">together</th><td>%s</td><td></td></tr>\n</tbody>\n</table>\n"
                        .formatted(MakeSheetText.grams(all.mix().massG())));
        if (used.stream().anyMatch(amount -> SpoonText.of(amount).isPresent())) {
            html.append(
                    "<p class=\"fine\">Level spoons and cups of the United States, within 4 %; a scale is surer.</p>\n");
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
                        "Begins to freeze at %s"
                                .formatted(
                                        MakeSheetText.celsius(
                                                1, all.curve().initialFreezingPointC())))
                .x("temperature", "°C")
                .y("water that is ice", "%")
                .xBetween(COLDEST_C, 0)
                .yBetween(0, 100)
                .line("ice", COLDEST_C, 0, all.curve()::icePercentAt)
                .markX("serve", Situation.SERVING_C)
                .markX("store", all.batch().freezerC());
    }

    /**
     * A name for the sheet's file.
     *
     * @return letters, digits and hyphens, without an ending
     */
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
