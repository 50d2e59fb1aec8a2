package coldwright.science.diagnosis;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.crystal.Texture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What to expect, in words: the causes first, then what the spoon or the tongue will say. */
final class ExpectedFindings {
    private static final int MOST_CAUSES = 2;

    /** A second cause is named from this share of all causes on, %. */
    private static final double WORTH_NAMING_PERCENT = 25;

    private ExpectedFindings() {}

    static String words(Situation situation, Symptom symptom, List<Cause> causes) {
        String why =
                causes.stream()
                        .limit(MOST_CAUSES)
                        .filter(one -> one.equals(causes.get(0)) || isListed(one))
                        .map(Cause::what)
                        .collect(Collectors.joining(" and "));
        return why + ": expect " + of(symptom, situation.crystalUm());
    }

    private static boolean isListed(Cause cause) {
        return cause.sharePercent() >= WORTH_NAMING_PERCENT;
    }

    private static String of(Symptom symptom, Optional<Band> crystalUm) {
        return switch (symptom) {
            case ICY -> crystalUm.map(ExpectedFindings::ice).orElse("ice you can feel");
            case HARD -> "it to be hard";
            case TOO_SOFT -> "it to be too soft";
            case BUTTERY, SANDY, WEAK, GUMMY, TOO_SWEET -> "it to be " + symptom.words();
            case WILL_NOT_FREEZE -> "it not to freeze well";
            case MELTS_FAST -> "it to melt fast";
            case SHRINKS -> "it to shrink";
        };
    }

    private static String ice(Band um) {
        double smooth = Texture.SMOOTH.upToUm();
        String size =
                "crystals of about %s µm (%s to %s)"
                        .formatted(whole(um.middle()), whole(um.low()), whole(um.high()));
        if (um.middle() > smooth) {
            return "ice you can feel, " + size;
        }
        return um.high() > smooth
                ? "ice you may feel, " + size
                : "it to be smooth at first, " + size + ", and to turn icy sooner than usual";
    }

    private static String whole(double um) {
        return Require.format(Math.rint(um));
    }
}
