package coldwright.print;

import static coldwright.print.HtmlMarkup.text;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;
import coldwright.paint.EmptyAxes;

import java.math.BigDecimal;
import java.util.List;

/** Questions on paper, with the answer or room for one. */
final class QuestionSheet {
    private QuestionSheet() {}

    static String html(
            LessonPart.Prediction prediction,
            HandoutEdition edition,
            String said,
            NumberedFigures exhibits) {
        StringBuilder html = new StringBuilder("<div class=\"forecast\">\n");
        html.append("<p class=\"label\">%s</p>\n".formatted(text("predict")));
        html.append(
                "<p class=\"question\">%s</p>\n".formatted(HtmlMarkup.line(prediction.question())));
        boolean told = edition == HandoutEdition.ANSWERS;
        String answer =
                prediction
                        .answer()
                        .match(
                                choice -> choices(choice, told, said),
                                amount -> amount(amount, told, said),
                                curve -> curve(curve, told, said, exhibits));
        return html.append(answer).append("</div>\n").toString();
    }

    private static String curve(
            ExpectedAnswer.Curve curve, boolean told, String said, NumberedFigures exhibits) {
        String axes =
                !said.isEmpty()
                        ? answerText(said)
                        : told
                                ? ""
                                : exhibits.empty(
                                        EmptyAxes.of(axis(curve.level()), axis(curve.upright())));
        return axes + (told ? right(text("right-curve")) : "");
    }

    private static String right(String words) {
        return "<p class=\"right\">%s</p>\n".formatted(words);
    }

    private static String choices(ExpectedAnswer.Choice choice, boolean told, String said) {
        StringBuilder html = new StringBuilder("<ul class=\"choices\">\n");
        for (int i = 0; i < choice.choices().size(); i++) {
            String words = choice.choices().get(i);
            boolean right = told && i == choice.right();
            html.append(
                    "<li><span class=\"box\">%s</span> %s%s</li>\n"
                            .formatted(
                                    words.equals(said) ? "×" : "\u00A0",
                                    right
                                            ? "<b>" + HtmlMarkup.line(words) + "</b>"
                                            : HtmlMarkup.line(words),
                                    right
                                            ? " <i class=\"right\">%s</i>"
                                                    .formatted(text("right-choice"))
                                            : ""));
        }
        return html.append("</ul>\n").toString();
    }

    private static String amount(ExpectedAnswer.Amount amount, boolean told, String said) {
        String unit = HtmlMarkup.escaped(amount.unit());
        String line =
                said.isEmpty()
                        ? told ? "" : "<p><span class=\"rule\"></span> %s</p>\n".formatted(unit)
                        : answerText(said);
        return told
                ? line
                        + right(
                                text(
                                        "right-amount",
                                        (number(amount.value()) + "\u00A0" + unit),
                                        number(amount.within())))
                : line;
    }

    private static String answerText(String said) {
        return said.isEmpty()
                ? ""
                : "<p>%s <b>%s</b></p>\n".formatted(text("your-answer"), HtmlMarkup.line(said));
    }

    private static Axis axis(ExpectedAnswer.Scale scale) {
        return Axis.of(scale.label(), scale.unit()).between(scale.from(), scale.to());
    }

    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString().replace('-', '−');
    }

    /**
     * Room for the output of a snippet.
     *
     * @param figures its figures; the axes of each are printed to draw on
     * @param worded whether it also has text output, or whether that is unknown
     */
    static String room(List<Figure> figures, boolean worded, NumberedFigures exhibits) {
        StringBuilder html =
                new StringBuilder(
                        "<div class=\"room\"><p class=\"label\">%s</p>".formatted(text("result")));
        String line = "<p class=\"line\">\u00A0</p>";
        int lines = figures.isEmpty() ? 3 : worded ? 1 : 0;
        html.append(line.repeat(lines));
        figures.forEach(one -> html.append(exhibits.empty(one)));
        return html.append("</div>\n").toString();
    }
}
