package coldwright.workbook.work;

import coldwright.laws.Draw;

import java.time.Instant;

/** Any work that a learner may have done. */
public final class Works {
    private static final int MOST_SECONDS = 2_000_000_000;

    private static final String[] HARD = {
        "\n",
        "\r\n",
        "\t",
        "  ",
        "step: a",
        "snippet 1:",
        "⟦U+0041⟧",
        "\uD83C",
        "🍦",
        "heat = 3; // dial 0 to 9",
        "\u0000",
        "# a"
    };

    private Works() {}

    /** Any characters, and what is hard to carry. */
    public static String texts(Draw draw) {
        return String.join(
                "", draw.listOf(0, 8, d -> d.from(e -> e.oneOf(HARD), e -> e.brokenText(4))));
    }

    private static SnippetEdit edit(Draw draw) {
        return new SnippetEdit(draw.intIn(0, 5), texts(draw), ContentHash.of(texts(draw)));
    }

    private static LearnerAnswer said(Draw draw) {
        return draw.from(
                d -> new LearnerAnswer.Choice(d.intIn(0, 9), texts(d)),
                d -> new LearnerAnswer.Typed(texts(d)),
                d ->
                        new LearnerAnswer.Curve(
                                d.listOf(
                                        0,
                                        4,
                                        e ->
                                                new LearnerAnswer.Point(
                                                        e.finiteDouble(), e.finiteDouble()))));
    }

    private static StepWork step(Draw draw) {
        return new StepWork(
                texts(draw),
                draw.anyBoolean(),
                draw.anyBoolean(),
                draw.unlike(0, 3, SnippetEdit::index, Works::edit),
                draw.listOf(0, 2, Works::edit),
                draw.unlike(
                        0,
                        3,
                        GivenPrediction::index,
                        d -> new GivenPrediction(d.intIn(0, 5), texts(d), said(d))));
    }

    /** Work under one key. */
    public static LessonWork under(LessonKey key, Draw draw) {
        return new LessonWork(
                key,
                texts(draw),
                texts(draw),
                ContentHash.of(texts(draw)),
                Instant.ofEpochSecond(draw.intIn(0, MOST_SECONDS)),
                texts(draw),
                draw.unlike(0, 3, StepWork::title, Works::step));
    }
}
