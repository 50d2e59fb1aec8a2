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
 * @param crystals the method in the crystal model
 * @param coldC temperature that freezes it at the start, °C
 * @param assumed assumptions where the recipe gives no value
 */
record FreezeMethodSetup(
        FreezePlan plan, int vessels, Method crystals, double coldC, List<Phrase> assumed) {
    private static final double BAG_MM = FreezePlan.USUAL_BAG_MM;
    private static final double MOST_IN_BAG_L = 2;
    private static final double MOST_IN_TUB_L = 1;
    private static final double MOST_IN_CAN_L = 2;

    /** Height of the filling in a tub or can, as a share of its width. */
    private static final double HEIGHT_TO_WIDTH = 0.8;

    private static final double SHAKE_EVERY_MINUTES = 45;

    static FreezeMethodSetup of(Recipe batch, Mix mix) {
        return switch (batch.method()) {
            case BAG -> {
                Portions portions = Portions.of(batch, mix, MOST_IN_BAG_L);
                IceAndSalt bath = portions.bath();
                portions.assumed(assumption("bag", BAG_MM));
                yield portions.frozen(
                        portions.freeze().in(Holder.Bag.flat(BAG_MM)).by(bath),
                        Method.BAG,
                        bath.startC());
            }
            case CHURN -> {
                Portions portions = Portions.of(batch, mix, MOST_IN_CAN_L);
                IceAndSalt bath = portions.bath();
                portions.assumed(assumption("can", portions.widthMm()));
                yield portions.frozen(
                        portions.freeze().in(Holder.Churn.of(portions.widthMm())).by(bath),
                        Method.MACHINE,
                        bath.startC());
            }
            case TUB, SHAKEN -> {
                boolean shaken = batch.method() == Recipe.Method.SHAKEN;
                Portions portions = Portions.of(batch, mix, MOST_IN_TUB_L);
                portions.assumed(
                        shaken
                                ? assumption("shaken", portions.widthMm(), SHAKE_EVERY_MINUTES)
                                : assumption("tub", portions.widthMm()));
                Freeze freeze =
                        portions.freeze()
                                .in(Holder.Tub.round(portions.widthMm()))
                                .by(Cold.freezer(batch.freezerC()));
                yield portions.frozen(
                        shaken ? freeze.moved(Motion.every(SHAKE_EVERY_MINUTES)) : freeze,
                        shaken ? Method.SHAKEN_TUB : Method.STILL_TUB,
                        batch.freezerC());
            }
        };
    }

    /** Time at draw, min: at soft-serve if the batch is moved, when hard if it is at rest. */
    double frozenMinutes(Recipe batch) {
        return batch.method() == Recipe.Method.TUB
                ? plan.minutesToHard()
                : plan.minutesToSoftServe();
    }

    private static Phrase assumption(String key, Object... values) {
        return Phrase.of("batch", "assumed." + key, values);
    }

    /** The equal parts that a batch is frozen in. */
    private record Portions(Recipe batch, Mix part, int count, List<Phrase> words) {
        static Portions of(Recipe batch, Mix mix, double mostL) {
            int count = Math.max(1, (int) Math.ceil(mix.volumeL() / mostL - 1e-9));
            List<Phrase> words = new ArrayList<>();
            if (mix.massG() < FreezingSetup.LEAST_TIMED_G) {
                words.add(assumption("small", FreezingSetup.LEAST_TIMED_G));
            }
            double partG = Math.max(FreezingSetup.LEAST_TIMED_G, mix.massG() / count);
            return new Portions(batch, mix.scaledTo(partG), count, words);
        }

        double widthMm() {
            double volumeMm3 = part.volumeL() * 1e6;
            return Math.cbrt(4 * volumeMm3 / (Math.PI * HEIGHT_TO_WIDTH));
        }

        Freeze freeze() {
            return Freeze.of(part).withOverrun(batch.airPercent());
        }

        IceAndSalt bath() {
            if (batch.bath().isPresent()) {
                FreezingSetup.Bath stated = batch.bath().get();
                return IceAndSalt.of(stated.iceG() / count, stated.saltG() / count);
            }
            double iceG = FreezingSetup.ICE_PER_BATCH * part.massG();
            words.add(assumption("no-bath"));
            return IceAndSalt.of(iceG, FreezingSetup.SALT_PER_ICE * iceG);
        }

        void assumed(Phrase vessel) {
            words.add(count == 1 ? vessel : assumption("parts", count, vessel));
        }

        FreezeMethodSetup frozen(Freeze freeze, Method method, double coldC) {
            FreezePlan plan = freeze.hardenedBy(Cold.freezer(batch.freezerC())).plan();
            return new FreezeMethodSetup(plan, count, method, coldC, words);
        }
    }
}
