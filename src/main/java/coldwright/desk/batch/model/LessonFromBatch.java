package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.FreezingDefaults;
import coldwright.batch.Recipe;
import coldwright.batch.StorageConditions;
import coldwright.batch.Typed;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.Holder;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;

import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a batch as a lesson: the same figures, as snippets to change. */
public final class LessonFromBatch {
    private LessonFromBatch() {}

    /**
     * Writes the lesson.
     *
     * @param recipe the recipe, with the composition of its own ingredients
     * @param all its analysis
     * @return a lesson's text
     */
    public static String of(Recipe recipe, BatchAnalysis all) {
        String amounts =
                all.mix().amounts().stream()
                        .map(amount -> amount(recipe, amount))
                        .collect(Collectors.joining(",\n        "));
        double freezerC = all.batch().freezerC();
        return """
                # %s, as code

                <!--
                track: Your own batches
                minutes: 10
                -->

                The page of your batch ran these lines. Change a number and run them again.

                ## What goes in

                ```java
                var mix = Mix.of(
                        %s);
                mix
                ```

                ## How it freezes

                ```java
                var curve = mix.freezingCurve();
                show(Figure.of("How it freezes")
                        .x("temperature", "°C").y("share of the water that is ice", "%%")
                        .line("ice", -30, 0, curve::icePercentAt)
                        .markX("serving", -12).markX("freezer", %s));
                curve.initialFreezingPointC()
                ```

                ```java
                curve.icePercentAt(-12)
                ```

                ## How long it takes

                %s

                ```java
                var part = mix.scaledTo(%s);
                var plan = %s
                        .hardenedBy(Cold.freezer(%s)).plan();
                plan
                ```

                ## How sweet it is

                ```java
                Sweetness.of(mix).percentOfSucroseSolution()
                ```

                %s
                """
                .formatted(
                        plain(recipe.name()),
                        amounts,
                        number(freezerC),
                        caution(all.batch().method()),
                        number(
                                Math.max(
                                        FreezingDefaults.LEAST_TIMED_G,
                                        all.mix().massG() / all.parts())),
                        freeze(all),
                        number(freezerC),
                        expected(all));
    }

    /** Crystals and findings, under the same conditions as on the page. */
    private static String expected(BatchAnalysis all) {
        String situation =
                "Situation.of(mix).frozenAt(%s).withAir(%s)"
                        .formatted(number(all.coldC()), number(all.batch().airPercent()));
        if (all.crystals().isEmpty()) {
            return "## What to expect\n\n```java\nDiagnosis.foresee(%s)\n```".formatted(situation);
        }
        boolean still = all.batch().method() == Recipe.Method.TUB;
        double minutes = still ? all.plan().minutesToHard() : all.plan().minutesToSoftServe();
        boolean timed = minutes >= 1 && minutes <= 4000;
        String freezerC = number(all.batch().freezerC());
        return """
                ## How large its crystals grow

                ```java
                var drawn = CrystalStory.of(mix).frozenBy(%s%s);
                var night = drawn.storedAt(%s).forHours(10);
                night.meanUm()
                ```

                ```java
                drawn.storedAt(%s).swinging(1).forDays(14).meanUm()
                ```
                %s

                ## What to expect

                ```java
                Diagnosis.foresee(%s
                        .withCrystals(%s.meanUm())%s)
                ```"""
                .formatted(
                        crystalMethod(all.batch().method()),
                        timed
                                ? still ? ", plan.minutesToHard()" : ", plan.minutesToSoftServe()"
                                : "",
                        freezerC,
                        freezerC,
                        all.batch().stored().map(one -> kept(one, freezerC)).orElse(""),
                        situation,
                        all.batch().stored().isPresent() ? "kept" : "night",
                        all.batch()
                                .stored()
                                .filter(StorageConditions::disturbed)
                                .map(one -> steady(one, freezerC))
                                .orElse(""));
    }

    private static String steady(StorageConditions storageConditions, String freezerC) {
        return "\n        .steadyWouldBe(drawn.storedAt(%s).forDays(%s).meanUm())"
                .formatted(freezerC, number(storageConditions.days()));
    }

    private static String kept(StorageConditions storageConditions, String freezerC) {
        return """

                As it was kept:

                ```java
                var kept = drawn.storedAt(%s).swinging(%s).forDays(%s)%s;
                kept.meanUm()
                ```
                """
                .formatted(
                        freezerC,
                        number(storageConditions.swingC()),
                        number(storageConditions.days()),
                        storageConditions
                                .warmed()
                                .map(
                                        one ->
                                                "\n        .heatShock(%s, %s)"
                                                        .formatted(
                                                                number(one.temperatureC()),
                                                                number(one.hours())))
                                .orElse(""));
    }

    private static String crystalMethod(Recipe.Method method) {
        return switch (method) {
            case BAG -> "Method.BAG";
            case CHURN -> "Method.MACHINE";
            case TUB -> "Method.STILL_TUB";
            case SHAKEN -> "Method.SHAKEN_TUB";
        };
    }

    private static String amount(Recipe recipe, Amount amount) {
        String name = amount.ingredient().name();
        String grams = number(amount.massG());
        for (Typed<Ingredient> own : recipe.own()) {
            if (own.value().filter(amount.ingredient()::equals).isPresent()) {
                String parts = own.text().substring(own.text().indexOf('=') + 1).strip();
                return "grams(%s, OwnIngredient.of(%s, %s))"
                        .formatted(grams, quoted(name), quoted(parts));
            }
        }
        return "grams(%s, Shelf.find(%s))".formatted(grams, quoted(name));
    }

    private static String freeze(BatchAnalysis all) {
        Recipe batch = all.batch();
        var freeze = all.plan().freeze();
        String air = number(batch.airPercent());
        String start = "Freeze.of(part).withOverrun(" + air + ")\n        ";
        Cold cold = freeze.cold();
        String by =
                cold instanceof Cold.Bath bath
                        ? ".by(IceAndSalt.of(%s, %s))"
                                .formatted(number(bath.bath().iceG()), number(bath.bath().saltG()))
                        : ".by(Cold.freezer(%s))".formatted(number(batch.freezerC()));
        String moved =
                batch.method() == Recipe.Method.SHAKEN ? "\n        .moved(Motion.every(45))" : "";
        return start + holder(freeze.holder()) + by + moved;
    }

    private static String holder(Holder holder) {
        if (holder instanceof Holder.Bag bag) {
            return ".in(Holder.Bag.flat(%s))".formatted(number(bag.thicknessMm()));
        }
        if (holder instanceof Holder.Tub tub) {
            return ".in(Holder.Tub.round(%s))".formatted(number(tub.diameterMm()));
        }
        if (holder instanceof Holder.Churn churn) {
            return ".in(Holder.Churn.of(%s))".formatted(number(churn.diameterMm()));
        }
        throw new AssertionError(holder);
    }

    private static String caution(Recipe.Method method) {
        return switch (method) {
            case BAG, CHURN -> "Ice with salt is cold enough to burn skin: hold it in a towel.";
            case TUB, SHAKEN -> "Use no glass in the freezer.";
        };
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("`", "'") + "\"";
    }

    private static String plain(String name) {
        String words = name.replaceAll("[^\\p{L}\\p{N},.%°’'-]+", " ").strip();
        return words.isEmpty() ? "A batch" : words;
    }
}
