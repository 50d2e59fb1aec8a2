package coldwright.print;

import coldwright.lesson.Answer;
import coldwright.lesson.Part;

import java.math.BigDecimal;

/** Questions on paper, with room for an answer or with the answer. */
final class Questions {
    private Questions() {}

    static String html(Part.Forecast forecast, Edition edition, String said) {
        StringBuilder html = new StringBuilder("<div class=\"forecast\">\n");
        html.append("<p class=\"label\">What do you expect?</p>\n");
        html.append("<p class=\"question\">%s</p>\n".formatted(Markup.line(forecast.question())));
        boolean told = edition == Edition.ANSWERS;
        if (forecast.answer() instanceof Answer.Choice choice) {
            html.append(choices(choice, told, said));
        } else if (forecast.answer() instanceof Answer.Amount amount) {
            html.append(amount(amount, told, said));
        } else if (forecast.answer() instanceof Answer.Curve curve) {
            html.append(said.isEmpty() ? axes(curve) : said(said));
            html.append(
                    told ? "<p class=\"right\">Right is the first curve of the figure.</p>\n" : "");
        } else {
            throw new AssertionError(forecast.answer());
        }
        return html.append("</div>\n").toString();
    }

    private static String choices(Answer.Choice choice, boolean told, String said) {
        StringBuilder html = new StringBuilder("<ul class=\"choices\">\n");
        for (int i = 0; i < choice.choices().size(); i++) {
            String words = choice.choices().get(i);
            boolean right = told && i == choice.right();
            html.append(
                    "<li><span class=\"box\">%s</span> %s%s</li>\n"
                            .formatted(
                                    words.equals(said) ? "×" : "\u00A0",
                                    right
                                            ? "<b>" + Markup.line(words) + "</b>"
                                            : Markup.line(words),
                                    right ? " <i class=\"right\">(right)</i>" : ""));
        }
        return html.append("</ul>\n").toString();
    }

    private static String amount(Answer.Amount amount, boolean told, String said) {
        String unit = Markup.escaped(amount.unit());
        String line =
                said.isEmpty()
                        ? told ? "" : "<p><span class=\"rule\"></span> %s</p>\n".formatted(unit)
                        : said(said);
        return told
                ? line
                        + "<p class=\"right\">Right is %s\u00A0%s; within %s counts as right.</p>\n"
                                .formatted(number(amount.value()), unit, number(amount.within()))
                : line;
    }

    private static String said(String said) {
        return said.isEmpty()
                ? ""
                : "<p>The answer given: <b>%s</b></p>\n".formatted(Markup.line(said));
    }

    /** Empty axes to draw on. */
    private static String axes(Answer.Curve curve) {
        return """
                <svg xmlns="http://www.w3.org/2000/svg" class="axes" width="520" height="240" viewBox="0 0 520 240" role="img" aria-label="Empty axes to draw on: %s, and upright %s">
                <rect x="60" y="10" width="440" height="190" fill="none" stroke="#9a9488" stroke-width="0.8"/>
                %s<text x="60" y="216" font-size="11" font-family="Lato">%s</text>
                <text x="500" y="216" font-size="11" text-anchor="end" font-family="Lato">%s</text>
                <text x="280" y="232" font-size="11" text-anchor="middle" font-family="Lato">%s</text>
                <text x="54" y="20" font-size="11" text-anchor="end" font-family="Lato">%s</text>
                <text x="54" y="200" font-size="11" text-anchor="end" font-family="Lato">%s</text>
                <text x="64" y="24" font-size="11" font-family="Lato">%s</text>
                </svg>
                """
                .formatted(
                        caption(curve.level()),
                        caption(curve.upright()),
                        grid(),
                        number(curve.level().from()),
                        number(curve.level().to()),
                        caption(curve.level()),
                        number(curve.upright().to()),
                        number(curve.upright().from()),
                        caption(curve.upright()));
    }

    private static String grid() {
        StringBuilder lines = new StringBuilder();
        for (int i = 1; i < 10; i++) {
            lines.append(
                    "<path d=\"M%d 10V200\" stroke=\"#ddd8cc\" stroke-width=\"0.5\"/>\n"
                            .formatted(60 + 44 * i));
        }
        for (int i = 1; i < 5; i++) {
            lines.append(
                    "<path d=\"M60 %dH500\" stroke=\"#ddd8cc\" stroke-width=\"0.5\"/>\n"
                            .formatted(10 + 38 * i));
        }
        return lines.toString();
    }

    private static String caption(Answer.Scale scale) {
        return Markup.line(scale.label() + (scale.unit().isBlank() ? "" : ", " + scale.unit()));
    }

    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString().replace('-', '−');
    }

    static String room(String what) {
        return "<div class=\"room\"><p class=\"label\">%s</p>%s</div>\n"
                .formatted(what, "<p class=\"line\">\u00A0</p>".repeat(3));
    }
}
