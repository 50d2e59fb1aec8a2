package coldwright.print;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.lesson.Answer;
import coldwright.lesson.Part;
import coldwright.paint.EmptyAxes;

import java.math.BigDecimal;
import java.util.List;

/** Questions on paper, with room for an answer or with the answer. */
final class Questions {
    private Questions() {}

    static String html(Part.Forecast forecast, Edition edition, String said, Exhibits exhibits) {
        StringBuilder html = new StringBuilder("<div class=\"forecast\">\n");
        html.append("<p class=\"label\">What do you expect?</p>\n");
        html.append("<p class=\"question\">%s</p>\n".formatted(Markup.line(forecast.question())));
        boolean told = edition == Edition.ANSWERS;
        if (forecast.answer() instanceof Answer.Choice choice) {
            html.append(choices(choice, told, said));
        } else if (forecast.answer() instanceof Answer.Amount amount) {
            html.append(amount(amount, told, said));
        } else if (forecast.answer() instanceof Answer.Curve curve) {
            html.append(
                    !said.isEmpty()
                            ? said(said)
                            : told
                                    ? ""
                                    : exhibits.empty(
                                            EmptyAxes.of(
                                                    axis(curve.level()), axis(curve.upright()))));
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

    private static Axis axis(Answer.Scale scale) {
        return Axis.of(scale.label(), scale.unit()).between(scale.from(), scale.to());
    }

    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString().replace('-', '−');
    }

    /**
     * Room for what came out of a snippet.
     *
     * @param figures what it drew; each leaves its axes to draw on
     * @param worded whether it printed or gave something too, or it is not known what it does
     */
    static String room(List<Figure> figures, boolean worded, Exhibits exhibits) {
        StringBuilder html =
                new StringBuilder("<div class=\"room\"><p class=\"label\">What came out</p>");
        String line = "<p class=\"line\">\u00A0</p>";
        int lines = figures.isEmpty() ? 3 : worded ? 1 : 0;
        html.append(line.repeat(lines));
        figures.forEach(one -> html.append(exhibits.empty(one)));
        return html.append("</div>\n").toString();
    }
}
