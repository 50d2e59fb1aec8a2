package coldwright.science.freezing;

import coldwright.science.Rounded;
import coldwright.science.Temperature;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Comments on an answer: ranges, guesses, and where freezing ends. */
final class FreezingNotes {
    /** How far the end of freezing may be off, °C: from memory. */
    private static final double LIMIT_UNSURE_C = 3;

    /** Solutes with less than this share of all particles are not mentioned, %. */
    private static final double MENTIONED_PERCENT = 10;

    /** Least share of particles of the solutes that determine the answer, %. */
    private static final double CARRYING_PERCENT = 30;

    private FreezingNotes() {}

    /** Comments on a freezing point. */
    static List<Phrase> of(Solution solution, double freezingPointC) {
        List<Phrase> notes = new ArrayList<>();
        if (freezingPointC <= IceActivity.COLDEST_C) {
            notes.add(phrase("never"));
            return List.copyOf(notes);
        }
        FreezingPointAccuracy freezingPointAccuracy = new FreezingPointAccuracy(solution);
        List<Solute> beyond =
                freezingPointAccuracy.withAtLeast(CARRYING_PERCENT).stream()
                        .filter(solute -> FreezingPointAccuracy.beyond(solute, freezingPointC))
                        .toList();
        if (!beyond.isEmpty()) {
            notes.add(
                    phrase(
                            "beyond",
                            Rounded.hundredth(freezingPointC),
                            names(beyond),
                            rough(freezingPointAccuracy.errorC(freezingPointC))));
        }
        for (Solute solute : freezingPointAccuracy.withAtLeast(MENTIONED_PERCENT)) {
            if (!solute.validity().measured()) {
                notes.add(
                        phrase(
                                "unmeasured",
                                solute.phrase(),
                                solute.validity().source(),
                                solute.validity().errorPercent()));
            }
        }
        if (freezingPointAccuracy.alcoholMixed() || freezingPointAccuracy.saltMixed()) {
            notes.add(
                    phrase(freezingPointAccuracy.alcoholMixed() ? "alcohol-mixed" : "salt-mixed"));
        }
        double limitC = FreezingCurve.maximalFreezeConcentrationC(solution);
        if (freezingPointC < limitC) {
            notes.add(phrase("too-thick", limitC));
        }
        if (undissolved(solution, freezingPointC)) {
            notes.add(phrase("undissolved", Rounded.hundredth(freezingPointC)));
        }
        return List.copyOf(notes);
    }

    /** Comments on a whole curve. */
    static List<Phrase> of(FreezingCurve curve, Solution solution) {
        double freezingPointC = curve.initialFreezingPointC();
        List<Phrase> notes = new ArrayList<>(of(solution, freezingPointC));
        double endC = curve.iceStopsGrowingC();
        if (onlySalts(solution)) {
            notes.add(phrase("eutectic", Rounded.hundredth(endC)));
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
                            coldestC ->
                                    notes.add(
                                            phrase(
                                                    "less-sure",
                                                    Rounded.hundredth(coldestC),
                                                    names(beyond))));
            if (endC > Temperature.COLDEST_C) {
                notes.add(
                        phrase(
                                "no-more-ice",
                                endC,
                                curve.concentratedPhaseSolidsPercent(endC),
                                LIMIT_UNSURE_C));
            }
        }
        return List.copyOf(notes);
    }

    /** Whether salts are the only solutes, so that there is a eutectic. */
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

    private static Phrase names(List<Solute> solutes) {
        return solutes.stream()
                .map(Solute::phrase)
                .reduce((one, other) -> phrase("and", one, other))
                .orElseThrow();
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.freezing", key, values);
    }

    private static double rough(double value) {
        double digits = value < 0.095 ? 100 : 10;
        return Math.rint(value * digits) / digits;
    }
}
