package coldwright.batch;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.crystal.Method;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.Freeze;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Holder;
import coldwright.science.freezer.Motion;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/**
 * Freezing conditions for a recipe: bag and churn are in ice and salt, tubs in the freezer. A batch
 * too large for one tub or can is divided into equal parts.
 *
 * @param plan times and comments, for one tub or can
 * @param vessels number of tubs, cans or bags
 * @param coldC temperature that freezes it at the start, °C
 * @param assumed assumptions where the recipe gives no value
 */
record FreezeMethodSetup(FreezePlan plan, int vessels, double coldC, List<Phrase> assumed) {
    private static final double BAG_MM = FreezePlan.USUAL_BAG_MM;
    private static final double MOST_IN_TUB_L = 1;
    private static final double MOST_IN_BATH_L = 2;

    /** Height of the filling in a tub or can, as a share of its width. */
    private static final double HEIGHT_TO_WIDTH = 0.8;

    private static final double SHAKE_EVERY_MINUTES = 45;

    static FreezeMethodSetup of(Recipe batch, Mix mix) {
        boolean inBath = batch.setup().inBath();
        double mostL = inBath ? MOST_IN_BATH_L : MOST_IN_TUB_L;
        int parts = Math.max(1, (int) Math.ceil(mix.volumeL() / mostL - 1e-9));
        List<Phrase> words = new ArrayList<>();
        if (mix.massG() < FreezingSetup.LEAST_TIMED_G) {
            words.add(assumption("small", FreezingSetup.LEAST_TIMED_G));
        }
        Mix part = mix.scaledTo(Math.max(FreezingSetup.LEAST_TIMED_G, mix.massG() / parts));
        double widthMm = Math.cbrt(4 * part.volumeL() * 1e6 / (Math.PI * HEIGHT_TO_WIDTH));
        Freeze freeze = Freeze.of(part).withOverrun(batch.airPercent());
        double coldC = batch.freezerC();
        Cold freezer = Cold.freezer(coldC);
        if (inBath) {
            IceAndSalt bath = bath(batch, part, parts, words);
            freeze = freeze.by(bath);
            coldC = bath.startC();
        } else {
            freeze = freeze.by(freezer);
        }
        Phrase vessel =
                switch (batch.method()) {
                    case BAG -> assumption("bag", BAG_MM);
                    case MACHINE -> assumption("can", widthMm);
                    case STILL_TUB -> assumption("tub", widthMm);
                    case SHAKEN_TUB -> assumption("shaken", widthMm, SHAKE_EVERY_MINUTES);
                };
        words.add(parts == 1 ? vessel : assumption("parts", parts, vessel));
        freeze =
                switch (batch.method()) {
                    case BAG -> freeze.in(Holder.Bag.flat(BAG_MM));
                    case MACHINE -> freeze.in(Holder.Churn.of(widthMm));
                    case STILL_TUB -> freeze.in(Holder.Tub.round(widthMm));
                    case SHAKEN_TUB ->
                            freeze.in(Holder.Tub.round(widthMm))
                                    .moved(Motion.every(SHAKE_EVERY_MINUTES));
                };
        return new FreezeMethodSetup(freeze.hardenedBy(freezer).plan(), parts, coldC, words);
    }

    /** The bath of one part: its share of the stated one, or the usual one. */
    private static IceAndSalt bath(Recipe batch, Mix part, int parts, List<Phrase> words) {
        if (batch.bath().isPresent()) {
            FreezingSetup.Bath stated = batch.bath().get();
            return IceAndSalt.of(stated.iceG() / parts, stated.saltG() / parts);
        }
        words.add(assumption("no-bath"));
        double iceG = FreezingSetup.ICE_PER_BATCH * part.massG();
        return IceAndSalt.of(iceG, FreezingSetup.SALT_PER_ICE * iceG);
    }

    /** Time at draw, min: at soft-serve if the batch is moved, when hard if it is at rest. */
    double frozenMinutes(Recipe batch) {
        return batch.method() == Method.STILL_TUB
                ? plan.minutesToHard()
                : plan.minutesToSoftServe();
    }

    private static Phrase assumption(String key, Object... values) {
        return Phrase.of("batch", "assumed." + key, values);
    }
}
