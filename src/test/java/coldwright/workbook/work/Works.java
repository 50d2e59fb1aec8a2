package coldwright.workbook.work;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

import java.time.Instant;
import java.util.List;

/** Any work that a learner may have done. */
public final class Works {
    private static final int MOST_SECONDS = 2_000_000_000;

    private Works() {}

    /** Any characters, and what is hard to carry. */
    public static Arbitrary<String> texts() {
        Arbitrary<String> hard =
                Arbitraries.of(
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
                        "# a");
        return Arbitraries.oneOf(hard, Arbitraries.strings().all().ofMaxLength(4))
                .list()
                .ofMaxSize(8)
                .map(all -> String.join("", all));
    }

    private static Arbitrary<SnippetEdit> edits() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 5), texts(), texts().map(ContentHash::of))
                .as(SnippetEdit::new);
    }

    private static Arbitrary<Said> said() {
        Arbitrary<Said> choices =
                Combinators.combine(Arbitraries.integers().between(0, 9), texts())
                        .as(Said.Choice::new);
        Arbitrary<Said> typed = texts().map(Said.Typed::new);
        Arbitrary<Said> curves =
                Combinators.combine(Arbitraries.doubles(), Arbitraries.doubles())
                        .as(Said.Point::new)
                        .list()
                        .ofMaxSize(4)
                        .map(Said.Curve::new);
        return Arbitraries.oneOf(choices, typed, curves);
    }

    private static Arbitrary<StepWork> steps() {
        Arbitrary<Forecasted> forecasts =
                Combinators.combine(Arbitraries.integers().between(0, 5), texts(), said())
                        .as(Forecasted::new);
        return Combinators.combine(
                        texts(),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        edits().list().uniqueElements(SnippetEdit::index).ofMaxSize(3),
                        edits().list().ofMaxSize(2),
                        forecasts.list().uniqueElements(Forecasted::index).ofMaxSize(3))
                .as(StepWork::new);
    }

    /** Work under one key. */
    public static Arbitrary<LessonWork> under(LessonKey key) {
        Arbitrary<List<StepWork>> steps =
                steps().list().uniqueElements(StepWork::title).ofMaxSize(3);
        return Combinators.combine(
                        texts(),
                        texts(),
                        texts().map(ContentHash::of),
                        Arbitraries.integers().between(0, MOST_SECONDS).map(Instant::ofEpochSecond),
                        texts(),
                        steps)
                .as(
                        (file, title, hash, when, inSight, all) ->
                                new LessonWork(key, file, title, hash, when, inSight, all));
    }
}
