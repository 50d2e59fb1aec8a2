package coldwright.print;

import static coldwright.print.HtmlMarkup.text;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;
import coldwright.paint.EmptyAxes;
import coldwright.words.Words;

import java.util.List;
import java.util.Set;

/** Questions on paper, with the answer or room for one. */
final class QuestionSheet {
    private QuestionSheet() {}

    static String html(
            LessonPart.Asked prediction,
            HandoutEdition edition,
            String said,
            NumberedFigures exhibits) {
        boolean told = edition == HandoutEdition.ANSWERS;
        String answer =
                prediction
                        .answer()
                        .match(
                                choice ->
                                        choices(
                                                choice.choices(),
                                                Set.of(choice.choices().indexOf(said)),
                                                told ? Set.of(choice.right()) : Set.of(),
                                                List.of()),
                                several ->
                                        choices(
                                                several.choices(),
                                                several.chosen(said),
                                                told ? several.right() : Set.of(),
                                                told ? several.reasons() : List.of()),
                                amount -> amount(amount, told, said),
                                curve -> curve(curve, told, said, exhibits));
        return """
                <div class="forecast">
                <p class="label">%s</p>
                <p class="question">%s</p>
                %s</div>
                """
                .formatted(
                        text(prediction instanceof LessonPart.Prediction ? "predict" : "question"),
                        HtmlMarkup.line(prediction.question()),
                        answer);
    }

    private static String curve(
            ExpectedAnswer.Curve curve, boolean told, String said, NumberedFigures exhibits) {
        Figure axes = EmptyAxes.of(axis(curve.level()), axis(curve.upright()));
        return answered(said, told ? "" : exhibits.empty(axes))
                + (told ? right(text("right-curve")) : "");
    }

    private static String right(String words) {
        return "<p class=\"right\">%s</p>\n".formatted(words);
    }

    private static String choices(
            List<String> choices, Set<Integer> ticked, Set<Integer> right, List<String> reasons) {
        StringBuilder html = new StringBuilder("<ul class=\"choices\">\n");
        for (int i = 0; i < choices.size(); i++) {
            String words = HtmlMarkup.line(choices.get(i));
            String reason = reasons.isEmpty() ? "" : reasons.get(i);
            html.append(
                    "<li><span class=\"box\">%s</span> %s%s%s</li>\n"
                            .formatted(
                                    ticked.contains(i) ? "×" : "\u00A0",
                                    right.contains(i) ? "<b>" + words + "</b>" : words,
                                    right.contains(i)
                                            ? " <i class=\"right\">%s</i>"
                                                    .formatted(text("right-choice"))
                                            : "",
                                    reason.isEmpty()
                                            ? ""
                                            : " – <i>%s</i>".formatted(HtmlMarkup.line(reason))));
        }
        return html.append("</ul>\n").toString();
    }

    private static String amount(ExpectedAnswer.Amount amount, boolean told, String said) {
        String unit = HtmlMarkup.escaped(amount.unit());
        String right =
                text(
                        "right-amount",
                        number(amount.value()) + "\u00A0" + unit,
                        number(amount.within()));
        String rule = "<p><span class=\"rule\"></span> %s</p>\n".formatted(unit);
        return answered(said, told ? "" : rule) + (told ? right(right) : "");
    }

    /** A learner's answer, or room for one. */
    private static String answered(String said, String room) {
        return said.isEmpty()
                ? room
                : "<p>%s <b>%s</b></p>\n".formatted(text("your-answer"), HtmlMarkup.line(said));
    }

    private static Axis axis(ExpectedAnswer.Scale scale) {
        return Axis.of(scale.label(), scale.unit()).between(scale.from(), scale.to());
    }

    static String number(double value) {
        return Words.written(Words.shown(), Words.number(value));
    }

    /**
     * Room for the output of a snippet: the axes of each figure to draw on, and lines if it also
     * has text output or that is unknown.
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
