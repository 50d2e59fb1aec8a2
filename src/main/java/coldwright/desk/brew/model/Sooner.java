package coldwright.desk.brew.model;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile;
import coldwright.batch.BatchReader;
import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.science.Require;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Soft-serve within some minutes: more salt in the bath, a smaller batch, or another method. */
final class Sooner {
    /** Salt for each gram of ice beyond which ice and salt get no colder (eutectic, 23 %). */
    private static final double MOST_SALT_PER_ICE = 0.3;

    private static final double USUAL_ICE_PER_BATCH = 3;
    private static final double USUAL_SALT_PER_ICE = 0.25;
    private static final double LEAST_SHARE = 0.25;
    private static final int HALVINGS = 6;

    private Sooner() {}

    static Answer of(Recipe recipe, Reckoning now, String wish, double minutes) throws BatchFault {
        Require.within("minutes", minutes, new Require.Range(1, 10_000, "min"));
        double stands = now.plan().minutesToSoftServe();
        if (stands <= minutes) {
            return new Answer(
                    wish, Say.of("batch.wish.ready-already", Told.minutes(stands)), List.of());
        }
        List<Offer> offers = new ArrayList<>();
        if (recipe.means().inBath()) {
            double iceG =
                    recipe.means().iceG().isBlank()
                            ? USUAL_ICE_PER_BATCH * now.mix().massG()
                            : now.batch().bath().map(bath -> bath.iceG()).orElse(0.0);
            double saltG =
                    now.batch().bath().map(bath -> bath.saltG()).orElse(USUAL_SALT_PER_ICE * iceG);
            least(
                            recipe,
                            minutes,
                            saltG,
                            MOST_SALT_PER_ICE * iceG,
                            salt -> salted(recipe, iceG, salt))
                    .ifPresent(offers::add);
        }
        double massG = now.mix().massG();
        least(recipe, minutes, massG, LEAST_SHARE * massG, recipe::weighing).ifPresent(offers::add);
        if (!recipe.means().inBath()) {
            Recipe bag = recipe.by(recipe.means().by(BatchFile.Method.BAG));
            if (minutesOf(bag) <= minutes) {
                offers.add(offer(recipe, bag));
            }
        }
        String said =
                offers.isEmpty()
                        ? Say.of(
                                recipe.means().inBath()
                                        ? "batch.wish.not-ready"
                                        : "batch.wish.not-ready-in-freezer",
                                Told.minutes(stands))
                        : Say.of("batch.wish.ready-now", Told.minutes(stands));
        return new Answer(wish, said, offers);
    }

    private static Recipe salted(Recipe recipe, double iceG, double saltG) {
        return recipe.by(
                recipe.means().bath(Typed.number(Math.rint(iceG)), Typed.number(Math.rint(saltG))));
    }

    /** The least way from one amount to another that is soon enough, if the whole way is. */
    private static java.util.Optional<Offer> least(
            Recipe recipe, double minutes, double from, double to, DoubleFunction<Recipe> at)
            throws BatchFault {
        if (from == to || minutesOf(at.apply(to)) > minutes) {
            return java.util.Optional.empty();
        }
        double late = from;
        double soon = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (late + soon) / 2;
            if (minutesOf(at.apply(middle)) <= minutes) {
                soon = middle;
            } else {
                late = middle;
            }
        }
        return java.util.Optional.of(offer(recipe, at.apply(soon)));
    }

    private static Offer offer(Recipe was, Recipe is) throws BatchFault {
        String words =
                Say.of(
                        "batch.wish.ready-by",
                        String.join("; ", Differences.between(was, is)),
                        Told.minutes(minutesOf(is)));
        return Wishes.offer(was, words, is);
    }

    private static double minutesOf(Recipe recipe) throws BatchFault {
        return Reckoning.of(BatchReader.read("batch", RecipeText.of(recipe)))
                .plan()
                .minutesToSoftServe();
    }
}
