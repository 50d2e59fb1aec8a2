package coldwright.science.diagnosis;

import coldwright.science.Band;
import coldwright.science.crystal.Texture;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Optional;

/** Sentences on what to expect: first the causes, then the symptom. */
final class ExpectedFindings {
    static final String AREA = "science.diagnosis";

    /** A second cause is named from this share of all causes on, %. */
    private static final double WORTH_NAMING_PERCENT = 25;

    private ExpectedFindings() {}

    static Phrase of(Situation situation, Symptom symptom, List<Cause> causes) {
        Phrase first = causes.get(0).kind().phrase();
        boolean second = causes.size() > 1 && causes.get(1).sharePercent() >= WORTH_NAMING_PERCENT;
        return Phrase.of(
                AREA,
                "expect",
                second ? Phrase.of(AREA, "and", first, causes.get(1).kind().phrase()) : first,
                of(symptom, situation.crystalUm()));
    }

    private static Phrase of(Symptom symptom, Optional<Band> crystalUm) {
        return symptom == Symptom.ICY && crystalUm.isPresent()
                ? ice(crystalUm.get())
                : Phrase.of(AREA, "expect." + symptom.name());
    }

    private static Phrase ice(Band um) {
        double smooth = Texture.SMOOTH.upToUm();
        String felt = um.middle() > smooth ? "felt" : um.high() > smooth ? "perhaps" : "later";
        return Phrase.of(AREA, "expect.ICY." + felt, um.middle(), um.low(), um.high());
    }
}
