package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Texture;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.science.sensory.Sweetness;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * All facts about a batch in one list: window, terminal, JSON and paper select from it, and the
 * words of each fact are in one place. Keys and order are those of {@code --json} ({@code
 * docs/batch-file.md}).
 */
public final class BatchReport {
    /** Shown if there are no findings. */
    public static final Phrase NO_FINDINGS = Phrase.of("batch", "page.no-findings");

    private static final int COLDEST_C = -30;
    private static final double NOTABLE_PERCENT = 1;

    private final Map<String, Fact> facts = new LinkedHashMap<>();

    private BatchReport() {}

    public static BatchReport of(BatchAnalysis all) {
        BatchReport report = new BatchReport();
        Mix mix = all.mix();
        report.add("", "mass_g", mix.massG());
        report.composition(mix);
        report.add(starts(all.curve()));
        report.add(
                "", "trade_method_initial_freezing_point_c", all.trade().initialFreezingPointC());
        report.add("", "trade_method_difference", all.trade().difference());
        for (int celsius : new int[] {-12, -18}) {
            report.add(ice(mix, celsius));
        }
        report.add(
                "",
                "ice_curve",
                IntStream.rangeClosed(0, -COLDEST_C).mapToObj(c -> icePoint(all, -c)).toList());
        report.add(sweetness(all.sweetness()));
        report.add("", "mix_density_kg_per_l", mix.densityKgPerL());
        report.add("", "mix_volume_l", mix.volumeL());
        report.add("", "overrun_percent", all.air().percent());
        report.add(
                Fact.of("", "volume_with_air_l", all.air().litres(mix))
                        .said(
                                "volume",
                                mix.volumeL(),
                                mix.densityKgPerL(),
                                all.air().litres(mix),
                                all.air().percent()));
        report.plan(all);
        all.batch().stored().ifPresent(report::stored);
        report.crystals(all);
        return report;
    }

    /** The composition of a mix, % by mass. */
    public static BatchReport of(Mix mix) {
        BatchReport report = new BatchReport();
        report.composition(mix);
        return report;
    }

    /** All facts, in the order of {@code --json}. */
    public List<Fact> facts() {
        return List.copyOf(facts.values());
    }

    /**
     * The facts of one group, in order.
     *
     * @param group such as {@code crystals}
     */
    public List<Fact> facts(String group) {
        return facts.values().stream().filter(fact -> fact.group().equals(group)).toList();
    }

    /**
     * The fact with this key.
     *
     * @throws IllegalArgumentException if the batch has no such fact
     */
    public Fact fact(String key) {
        Fact fact = facts.get(key);
        if (fact == null) {
            throw new IllegalArgumentException("the report has no \"" + key + "\"");
        }
        return fact;
    }

    /** The temperature at which a mix begins to freeze. */
    public static Fact starts(FreezingCurve curve) {
        return Fact.of("", "initial_freezing_point_c", curve.initialFreezingPointC());
    }

    /** The ice content of a mix at a temperature, °C, and how firm it is. */
    public static Fact ice(Mix mix, double temperatureC) {
        double percent = mix.freezingCurve().icePercentAt(temperatureC);
        return Fact.of("", "ice_percent_of_water_at_minus_%.0f_c".formatted(-temperatureC), percent)
                .said("ice", temperatureC, percent, Firmness.of(mix, temperatureC).phrase());
    }

    /** The ice that counts for firmness, at a temperature, °C; empty unless water is low. */
    public static Optional<Fact> spoon(Mix mix, double temperatureC) {
        double met = Firmness.spoonIcePercent(mix, temperatureC);
        double ice = mix.freezingCurve().icePercentAt(temperatureC);
        return ice - met < NOTABLE_PERCENT
                ? Optional.empty()
                : Optional.of(
                        Fact.of("", "spoon_ice_percent", met)
                                .said("spoon", mix.waterPercent(), temperatureC, met));
    }

    /** The sweetness of a mix. */
    public static Fact sweetness(Sweetness sweetness) {
        Band band = sweetness.percentOfSucroseSolution();
        boolean alike =
                DisplayText.decimals(0, band.low()).equals(DisplayText.decimals(0, band.high()));
        return Fact.of("", "sweetness_percent_of_sucrose_solution", band.middle())
                .said(alike ? "sweet-alike" : "sweet", band.middle(), band.low(), band.high())
                .between(
                        new Fact.Ends(
                                "sweetness_low_percent_of_sucrose_solution",
                                band.low(),
                                "sweetness_high_percent_of_sucrose_solution",
                                band.high()));
    }

    /** The time until a batch reaches a stage. */
    public static Fact minutes(FreezePlan plan, Stage stage) {
        FreezePlan.MinuteRange range = plan.rangeMinutes(stage);
        double likely = plan.minutesTo(stage);
        String key = "minutes_to_" + stage.name().toLowerCase(Locale.ROOT);
        return Fact.of("freeze_plan", key, likely)
                .said(
                        plan.reaches(stage) ? "stage" : "stage-never",
                        stage.phrase(),
                        time(likely),
                        time(range.least()),
                        time(range.most()))
                .between(new Fact.Ends(key + "_least", range.least(), key + "_most", range.most()));
    }

    /**
     * A duration in words.
     *
     * @param minutes the duration; infinite for never
     */
    public static Phrase time(double minutes) {
        return Double.isFinite(minutes)
                ? Fact.words("time", DisplayText.minutes(minutes))
                : Fact.words("never");
    }

    /** The mean size of crystals, µm, with its band, in words. */
    public static Phrase size(Band um) {
        return Fact.words("size", um.middle(), um.low(), um.high());
    }

    private void composition(Mix mix) {
        String group = "composition";
        add(group, "water_percent", mix.waterPercent());
        add(group, "fat_percent", mix.fatPercent());
        add(group, "milk_fat_percent", mix.milkFatPercent());
        add(group, "milk_solids_not_fat_percent", mix.milkSolidsNotFatPercent());
        add(group, "sugars_percent", mix.sugarsPercent());
        for (Component sugar : Component.values()) {
            if (sugar.kind() == Component.Kind.SUGAR) {
                add(group, sugar.words() + "_percent", mix.composition().percent(sugar));
            }
        }
        add(group, "total_solids_percent", mix.totalSolidsPercent());
        add(group, "alcohol_percent", mix.alcoholPercent());
        add(group, "salt_percent", mix.saltPercent());
        add(group, "protein_percent", mix.proteinPercent());
        add(group, "stabiliser_percent", mix.composition().percent(Component.STABILISER));
        add(group, "sugars_g_per_100_g_water", mix.sugarPer100gWater());
        add(group, "protein_g_per_100_g_water", mix.proteinPer100gWater());
    }

    private static Map<String, Object> icePoint(BatchAnalysis all, int celsius) {
        Map<String, Object> point = new LinkedHashMap<>();
        point.put("temperature_c", celsius);
        point.put("ice_percent_of_water", all.curve().icePercentAt(celsius));
        return point;
    }

    private void plan(BatchAnalysis all) {
        String group = "freeze_plan";
        FreezePlan plan = all.plan();
        add(group, "by", plan.freeze().cold().phrase());
        add(group, "parts", all.parts());
        add(group, "cold_at_start_c", all.coldC());
        for (Stage stage : Stage.values()) {
            add(minutes(plan, stage));
        }
        add(group, "shake_at_minutes", plan.shakeAtMinutes());
        add(group, "heat_removed_kj", plan.heatRemovedKJ());
        if (plan.freeze().cold() instanceof Cold.Bath) {
            add(group, "least_ice_g", plan.leastBath().iceG());
            add(group, "least_salt_g", plan.leastBath().saltG());
        }
        add(group, "remarks", plan.comments());
    }

    private void stored(StorageConditions stored) {
        add("stored", "days", stored.days());
        add("stored", "swing_c", stored.swingC());
        stored.warmed()
                .ifPresent(
                        warm -> {
                            add("stored", "warmed_to_c", warm.temperatureC());
                            add("stored", "warmed_hours", warm.hours());
                        });
    }

    private void crystals(BatchAnalysis all) {
        if (all.crystals().isEmpty()) {
            add(verdict(all));
            return;
        }
        CrystalsInStorage crystals = all.crystals().get();
        crystal("drawn", crystals.drawn());
        crystal("after_a_night", crystals.night());
        crystals.fortnight().ifPresent(fortnight -> crystal("after_two_weeks", fortnight));
        crystals.kept().ifPresent(kept -> crystal("as_kept", kept));
        crystals.steady().ifPresent(steady -> crystal("kept_steady", steady));
        add("crystals", "smooth_below_micrometres", (int) Texture.SMOOTH.upToUm());
        add(verdict(all));
    }

    /**
     * The crystals as tasted, without the rest of the report.
     *
     * @param all the analysis
     * @return their judgement; that there are none, if too little ice is kept
     */
    public static Fact verdict(BatchAnalysis all) {
        return all.crystals()
                .map(
                        crystals ->
                                Fact.of("crystals", "verdict", crystals.tasted().judgement())
                                        .said(
                                                crystals.kept().isPresent()
                                                        ? "tasted-kept"
                                                        : "tasted",
                                                size(crystals.tasted().meanUm())))
                .orElseGet(
                        () ->
                                Fact.of(
                                                "crystals",
                                                "verdict",
                                                Phrase.of("batch", "fact.no-crystals.json"))
                                        .said("no-crystals"));
    }

    private void crystal(String when, CrystalStory story) {
        Band um = story.meanUm();
        add(
                Fact.of("crystals", when + "_mean_micrometres", um.middle())
                        .said("crystals-" + when.replace('_', '-'), size(um), story.judgement())
                        .between(
                                new Fact.Ends(
                                        when + "_low_micrometres",
                                        um.low(),
                                        when + "_high_micrometres",
                                        um.high())));
    }

    private void add(String group, String key, Object value) {
        add(Fact.of(group, key, value));
    }

    private void add(Fact fact) {
        facts.put(fact.key(), fact);
    }
}
