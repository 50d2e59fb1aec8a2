package coldwright.desk.brew.model;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile.Method;
import coldwright.batch.BatchReader;
import coldwright.batch.Keeping;
import coldwright.batch.Reckoning;
import coldwright.batch.Stored;
import coldwright.desk.say.Say;
import coldwright.science.Band;
import coldwright.science.balance.Change;
import coldwright.science.balance.SuggestionLimits;
import coldwright.science.crystal.Texture;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.text.Written;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Smooth after one night: more of something that ties up the water, or more motion. */
final class Smoother {
    /** Mean size below which crystals are not felt, µm; its source stands with the texture. */
    static final double SMOOTH_UM = Texture.SMOOTH.upToUm();

    /** No more than this share of the batch is added. */
    private static final double MOST_SHARE = 0.15;

    /** What ties up water. */
    private static final List<Ingredient> TYING =
            List.of(
                    Shelf.SKIM_MILK_POWDER,
                    Shelf.GLUCOSE_SYRUP_POWDER,
                    Shelf.MALTODEXTRIN,
                    Shelf.SUCROSE);

    private static final int HALVINGS = 6;
    private static final int MOST_OFFERS = 2;

    private Smoother() {}

    /** A way to smaller crystals, with their size. */
    private record Way(double addedG, Recipe recipe, Band um) {}

    static Answer of(Recipe recipe, Reckoning now, String wish) {
        if (now.keeping().isEmpty()) {
            return new Answer(wish, Say.of("batch.crystals.none"), List.of());
        }
        Band stands = now.keeping().get().tasted().meanUm();
        if (stands.middle() <= SMOOTH_UM) {
            return new Answer(
                    wish,
                    Say.of("batch.wish.smooth-already", Told.size(stands), Told.when(now)),
                    List.of());
        }
        List<Offer> offers = offers(recipe, now);
        if (offers.isEmpty()) {
            String best =
                    ways(recipe, now).stream()
                            .map(Way::um)
                            .min(Comparator.comparingDouble(Band::middle))
                            .map(Told::size)
                            .orElse(Told.size(stands));
            return new Answer(
                    wish,
                    Say.of("batch.wish.not-smooth", Told.size(stands), Told.when(now), best),
                    List.of());
        }
        return new Answer(
                wish, Say.of("batch.wish.smooth-now", Told.size(stands), Told.when(now)), offers);
    }

    /** What makes it smooth when it is tasted; empty if it is so, or nothing small makes it so. */
    static List<Offer> offers(Recipe recipe, Reckoning now) {
        boolean rough =
                now.keeping().filter(one -> one.tasted().meanUm().middle() > SMOOTH_UM).isPresent();
        if (!rough) {
            return List.of();
        }
        return ways(recipe, now).stream()
                .filter(way -> way.um().middle() <= SMOOTH_UM)
                .sorted(Comparator.comparingDouble(Way::addedG))
                .limit(MOST_OFFERS)
                .map(way -> offer(recipe, way))
                .toList();
    }

    /** The same offer with the size of the crystals that it leads to. */
    static Offer sized(Offer offer) {
        return tasted(offer.recipe())
                .map(
                        um ->
                                new Offer(
                                        Say.of(
                                                "batch.sized",
                                                bare(offer.words()),
                                                Told.size(um),
                                                Told.when(offer.recipe())),
                                        offer.besides(),
                                        offer.recipe()))
                .orElse(offer);
    }

    /** The same kept as long without swings or warming, with the size of its crystals. */
    static Offer steady(Recipe was) {
        Recipe is = keptSteady(was);
        return sized(Wishes.offer(was, change(was, is), is));
    }

    private static Recipe keptSteady(Recipe was) {
        return was.by(was.means().kept(was.means().store().steady()));
    }

    private static Offer offer(Recipe was, Way way) {
        return Wishes.offer(
                was,
                Say.of(
                        "batch.sized",
                        bare(change(was, way.recipe())),
                        Told.size(way.um()),
                        Told.when(was)),
                way.recipe());
    }

    private static String change(Recipe was, Recipe is) {
        return is.equals(keptSteady(was))
                ? Say.of("batch.keep-steady")
                : Written.sentence(String.join("; ", Differences.between(was, is)));
    }

    private static List<Way> ways(Recipe recipe, Reckoning now) {
        List<Way> ways = new ArrayList<>();
        Mix mix = now.mix();
        for (Ingredient one : TYING) {
            if (SuggestionLimits.mayAdd(mix, one)) {
                least(recipe, one, MOST_SHARE * mix.massG()).ifPresent(ways::add);
            }
        }
        for (Method moved : moved(now.batch().method())) {
            Recipe other = recipe.by(recipe.means().by(moved));
            tasted(other).ifPresent(um -> ways.add(new Way(0, other, um)));
        }
        if (now.batch().stored().filter(Stored::disturbed).isPresent()) {
            Recipe steady = keptSteady(recipe);
            tasted(steady).ifPresent(um -> ways.add(new Way(0, steady, um)));
        }
        return ways;
    }

    private static List<Method> moved(Method method) {
        return switch (method) {
            case TUB -> List.of(Method.SHAKEN, Method.BAG);
            case SHAKEN, CHURN -> List.of(Method.BAG);
            case BAG -> List.of();
        };
    }

    /** The least of an ingredient that makes it smooth, or all of it if that is not enough. */
    private static Optional<Way> least(Recipe recipe, Ingredient one, double mostG) {
        Optional<Way> most = way(recipe, one, mostG);
        if (most.filter(way -> way.um().middle() <= SMOOTH_UM).isEmpty()) {
            return most;
        }
        double rough = 0;
        Way smooth = most.get();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (rough + smooth.addedG()) / 2;
            Optional<Way> tried = way(recipe, one, middle);
            if (tried.filter(way -> way.um().middle() <= SMOOTH_UM).isPresent()) {
                smooth = tried.get();
            } else {
                rough = middle;
            }
        }
        return way(recipe, one, Math.ceil(smooth.addedG()));
    }

    private static Optional<Way> way(Recipe recipe, Ingredient one, double massG) {
        Recipe more = recipe.changed(List.of(new Change(massG, one)));
        return tasted(more).map(um -> new Way(massG, more, um));
    }

    private static Optional<Band> tasted(Recipe recipe) {
        try {
            return Keeping.tastedUm(BatchReader.read("batch", RecipeText.of(recipe)));
        } catch (BatchFault e) {
            return Optional.empty();
        }
    }

    /** Without the full stop, since an arrow follows. */
    private static String bare(String sentence) {
        return sentence.replaceAll("\\.$", "");
    }
}
