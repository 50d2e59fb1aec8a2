package coldwright.science.freezing;

import coldwright.science.Require;
import coldwright.science.Temperature;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a learner should know about an answer: ranges, guesses, and where freezing ends. */
final class FreezingNotes {
    /** Solutes with less than this share of all particles are passed over in silence, %. */
    private static final double MENTIONED_PERCENT = 10;

    /** Solutes that carry the answer, %. */
    private static final double CARRYING_PERCENT = 30;

    private FreezingNotes() {}

    /** Remarks on a freezing point. */
    static List<String> of(Solution solution, double freezingPointC) {
        List<String> notes = new ArrayList<>();
        if (freezingPointC <= IceActivity.COLDEST_C) {
            notes.add("It is so strong that ice never forms at any temperature served here.");
            return List.copyOf(notes);
        }
        FreezingPointAccuracy freezingPointAccuracy = new FreezingPointAccuracy(solution);
        String beyond =
                names(
                        freezingPointAccuracy.withAtLeast(CARRYING_PERCENT).stream()
                                .filter(
                                        solute ->
                                                FreezingPointAccuracy.beyond(
                                                        solute, freezingPointC))
                                .toList());
        if (!beyond.isEmpty()) {
            notes.add(
                    "Freezing at %s °C, it lies beyond the published freezing points of %s: expect an error of about %s °C."
                            .formatted(
                                    degrees(freezingPointC),
                                    beyond,
                                    rough(freezingPointAccuracy.errorC(freezingPointC))));
        }
        for (Solute solute : freezingPointAccuracy.withAtLeast(MENTIONED_PERCENT)) {
            if (!solute.validity().measured()) {
                notes.add(
                        "No freezing points of %s were found: it is reckoned from its %s, to about %s %%."
                                .formatted(
                                        solute.displayName(),
                                        solute.validity().source(),
                                        Require.format(solute.validity().errorPercent())));
            }
        }
        if (freezingPointAccuracy.alcoholMixed() || freezingPointAccuracy.saltMixed()) {
            notes.add(
                    "%s with other solutes: the rule of mixtures could not be checked on measurements, expect an error of 5 %% of the depression."
                            .formatted(
                                    freezingPointAccuracy.alcoholMixed()
                                            ? "Alcohol"
                                            : "Much salt"));
        }
        double limitC = MaximalFreezeConcentration.temperatureC(solution);
        if (freezingPointC < limitC) {
            notes.add(
                    "It is too thick to freeze: below about %s °C water no longer gathers into crystals."
                            .formatted(whole(limitC)));
        }
        if (undissolved(solution, freezingPointC)) {
            notes.add(
                    "There is more salt than cold brine can hold: the rest stays undissolved, and it gets no colder than %s °C."
                            .formatted(degrees(freezingPointC)));
        }
        return List.copyOf(notes);
    }

    /** Remarks on a whole curve. */
    static List<String> of(FreezingCurve curve, Solution solution) {
        double freezingPointC = curve.initialFreezingPointC();
        List<String> notes = new ArrayList<>(of(solution, freezingPointC));
        double endC = curve.iceStopsGrowingC();
        if (onlySalts(solution)) {
            notes.add(
                    "At %s °C the last brine sets, as ice and salt crystals together (the eutectic); all its water counts as ice."
                            .formatted(degrees(endC)));
        } else if (freezingPointC > endC) {
            List<Solute> main = new FreezingPointAccuracy(solution).withAtLeast(CARRYING_PERCENT);
            List<Solute> beyond =
                    main.stream()
                            .filter(s -> s.validity().measured() && s.validity().coldestC() > endC)
                            .toList();
            beyond.stream()
                    .mapToDouble(s -> Math.min(freezingPointC, s.validity().coldestC()))
                    .max()
                    .ifPresent(
                            t ->
                                    notes.add(
                                            "Colder than %s °C the share of ice rests on more than published freezing points of %s: it may be 2 or 3 points off."
                                                    .formatted(degrees(t), names(beyond))));
            if (endC > Temperature.COLDEST_C) {
                notes.add(
                        "Below about %s °C no more ice forms: the syrup between the crystals, with %s %% solids, has grown too thick (limits from memory, ±3 °C)."
                                .formatted(
                                        whole(endC),
                                        whole(curve.concentratedPhaseSolidsPercent(endC))));
            }
        }
        return List.copyOf(notes);
    }

    /** Whether salts are all there is, so that there is a eutectic. */
    static boolean onlySalts(Solution solution) {
        boolean salt = false;
        for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
            if (part.getValue() > 0 && !part.getKey().isSalt()) {
                return false;
            }
            salt |= part.getValue() > 0;
        }
        return salt && solution.idealMillimol().values().stream().allMatch(mmol -> mmol == 0);
    }

    /** The lowest eutectic of the salts present, °C. */
    static double coldestEutecticC(Solution solution) {
        return solution.massG().entrySet().stream()
                .filter(part -> part.getValue() > 0 && part.getKey().isSalt())
                .mapToDouble(part -> part.getKey().eutectic().temperatureC())
                .min()
                .orElse(IceActivity.COLDEST_C);
    }

    private static boolean undissolved(Solution solution, double freezingPointC) {
        for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
            Solute solute = part.getKey();
            double molality =
                    1000 * part.getValue() / solute.molarMassGPerMol() / solution.waterG();
            if (solute.isSalt()
                    && freezingPointC <= solute.eutectic().temperatureC() + 1e-6
                    && molality > solute.eutectic().molality() * 1.001) {
                return true;
            }
        }
        return false;
    }

    private static String names(List<Solute> solutes) {
        return solutes.stream().map(Solute::displayName).collect(Collectors.joining(" and "));
    }

    private static String degrees(double value) {
        return Require.format(Math.rint(value * 100) / 100);
    }

    private static String rough(double value) {
        double digits = value < 0.095 ? 100 : 10;
        return Require.format(Math.rint(value * digits) / digits);
    }

    private static String whole(double value) {
        return Require.format(Math.rint(value));
    }
}
