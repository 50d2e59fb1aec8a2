package coldwright.print;

import static coldwright.print.MakeSheetText.celsius;
import static coldwright.print.MakeSheetText.word;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.science.crystal.Method;
import coldwright.science.freezer.Stage;
import coldwright.science.standards.Cooling;
import coldwright.science.standards.Pasteurisation;
import coldwright.text.DisplayText;
import coldwright.words.Words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The method of a batch, step by step. Freezing times and temperatures are calculated; the order of
 * mixing, the ten parts of sugar to a gum and the hours of ageing are common practice, no source.
 */
final class MakeSteps {
    /** First point of the rules' tables, 155 °F, and one that a kitchen can reach, 175 °F. */
    private static final double[] HEAT_C = {(155 - 32) / 1.8, (175 - 32) / 1.8};

    private static final double AGED_FROM_FAT_PERCENT = 3;
    private static final double MINUTES_FROM_SECONDS = 120;

    private final BatchAnalysis all;
    private final BatchReport report;
    private final IngredientHandling used;
    private final boolean heated;
    private final String late;
    private final String freezerC;
    private final List<String> steps = new ArrayList<>();

    private MakeSteps(BatchAnalysis all) {
        this.all = all;
        this.report = all.report();
        this.used = IngredientHandling.of(all.mix());
        this.heated = used.isHeated();
        this.late = used.names(used::goesInLate);
        this.freezerC = celsius(all.batch().freezerC());
    }

    static List<String> of(BatchAnalysis all) {
        MakeSteps steps = new MakeSteps(all);
        steps.mix();
        steps.cool();
        steps.freeze();
        steps.keep();
        return steps.steps;
    }

    private void step(String key, Object... values) {
        steps.add(word("step." + key, values).strip());
    }

    /** A sentence that follows others; empty unless it applies. */
    private static String also(boolean applies, String key, Object... values) {
        return applies ? " " + word("step." + key, values) : "";
    }

    private void mix() {
        String gums = used.names(IngredientHandling::isGum);
        String sugar = used.names(IngredientHandling::isDrySugar);
        if (!gums.isEmpty()) {
            step(sugar.isEmpty() ? "gums-in-liquid" : "gums", gums, sugar);
        }
        String fruit = used.names(IngredientHandling::isWholeFruit);
        String what = late.isEmpty() ? word("step.all") : word("step.all-but", late);
        String blend = also(!fruit.isEmpty(), "blend", fruit);
        if (!heated) {
            step("mix-cold", what, blend);
            return;
        }
        String egg = used.names(IngredientHandling::isEgg);
        boolean browned = IngredientHandling.namesBrownedSugar(all.batch().name());
        step(
                "mix-hot",
                what,
                blend,
                also(!egg.isEmpty(), "whisk", egg),
                also(browned && !sugar.isEmpty(), "browned"));
        if (egg.isEmpty() && !used.any(IngredientHandling::isMilk)) {
            step("boil");
            return;
        }
        Pasteurisation rule = egg.isEmpty() ? Pasteurisation.MIX : Pasteurisation.EGGNOG;
        step(
                "pasteurise",
                rule.rule(),
                rule.holdAt(HEAT_C[0]).listedAt().replace('.', Words.decimalMark()),
                time(rule.holdAt(HEAT_C[0]).seconds()),
                rule.holdAt(HEAT_C[1]).listedAt().replace('.', Words.decimalMark()),
                time(rule.holdAt(HEAT_C[1]).seconds()));
    }

    private static String time(double seconds) {
        return seconds >= MINUTES_FROM_SECONDS
                ? word("minutes", seconds / 60)
                : word("seconds", seconds);
    }

    private void cool() {
        String startC = celsius(all.plan().freeze().startC());
        step(
                heated ? "cool" : "chill",
                startC,
                heated ? DisplayText.sentence(Cooling.phrase().shown()) : "",
                also(!late.isEmpty(), "late", late));
        boolean aged =
                report.fact("fat_percent").number() > AGED_FROM_FAT_PERCENT
                        || used.any(IngredientHandling::isGum);
        if (heated && aged) {
            step("age", startC);
        }
    }

    private void freeze() {
        Method method = all.batch().method();
        List<Double> shakes = all.plan().shakeAtMinutes();
        step(
                "freeze." + all.batch().setup().methodWord(),
                all.parts() == 1 ? "" : word("step.parts", all.parts()) + " ",
                celsius(report.fact("cold_at_start_c").number()),
                method == Method.SHAKEN_TUB && !shakes.isEmpty()
                        ? word("step.shake", minutes(shakes)) + " "
                        : "",
                done(method == Method.STILL_TUB));
        if (all.batch().setup().inBath()) {
            step("rinse", hard());
        } else if (reaches(Stage.HARD)) {
            step("harden", hard());
        }
    }

    private static String minutes(List<Double> minutes) {
        return minutes.stream()
                .map(minute -> Words.decimals(0, minute))
                .collect(Collectors.joining(", "));
    }

    private String done(boolean still) {
        if (reaches(Stage.SOFT_SERVE)) {
            return word(
                    still ? "step.done-still" : "step.done",
                    BatchReport.time(stage(Stage.THICKENS).number()),
                    MakeSheetText.minutes(stage(Stage.SOFT_SERVE)));
        }
        return all.plan().comments().isEmpty()
                ? word("step.never")
                : DisplayText.sentence(all.plan().comments().get(0).shown());
    }

    private String hard() {
        return reaches(Stage.HARD)
                ? word("step.hard", freezerC, MakeSheetText.minutes(stage(Stage.HARD)))
                : word("step.never-hard", freezerC);
    }

    private boolean reaches(Stage stage) {
        return Double.isFinite(stage(stage).number());
    }

    private Fact stage(Stage stage) {
        return report.fact("minutes_to_" + stage.name().toLowerCase(Locale.ROOT));
    }

    private void keep() {
        step(
                "keep",
                report.find("scoopable_c").map(this::serve).orElse(word("step.serve.liquid")),
                freezerC,
                crystals());
    }

    private String serve(Fact scoopable) {
        Fact.Ends scoops = scoopable.band().orElseThrow();
        double storedC = all.batch().freezerC();
        return scoops.high() < storedC
                ? word("step.serve.soft", freezerC)
                : scoops.low() <= storedC
                        ? word("step.serve.scoop")
                        : word("step.serve.warm", celsius(scoops.low()), celsius(scoops.high()));
    }

    private String crystals() {
        Optional<String> night = size("after_a_night");
        return night.map(
                        one ->
                                also(
                                                true,
                                                "crystals",
                                                one,
                                                size("after_two_weeks")
                                                        .map(um -> word("step.two-weeks", um))
                                                        .orElse(""))
                                        + size("as_kept").map(this::kept).orElse(""))
                .orElse("");
    }

    private String kept(String um) {
        return also(
                true,
                "kept",
                all.batch().stored().orElseThrow().phrase(),
                um,
                size("kept_steady").map(steady -> word("step.steady", steady)).orElse(""));
    }

    private Optional<String> size(String when) {
        return report.find(when + "_mean_micrometres").map(fact -> word("um", fact.number()));
    }
}
