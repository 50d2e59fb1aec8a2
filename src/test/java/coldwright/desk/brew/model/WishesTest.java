package coldwright.desk.brew.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile;
import coldwright.batch.BatchReader;
import coldwright.batch.Keeping;
import coldwright.batch.Reckoning;
import coldwright.science.balance.Trait;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Allergen;
import coldwright.text.Written;

import org.junit.jupiter.api.Test;

import java.util.List;

class WishesTest {
    /** Amounts on the page are rounded to a tenth of a gram. */
    private static final double ROUNDED = 0.1;

    /** The smallest change ends just inside of what was wished, not far beyond. */
    private static final double WITHIN = 0.5;

    private static final Recipe SORBET = Recipe.toBegin("Blood-orange sorbet");

    private static final Recipe CUSTARD =
            new Recipe(
                    "Salted caramel",
                    Means.USUAL,
                    List.of(),
                    List.of(),
                    List.of(
                            new Line("500", "whole milk"),
                            new Line("200", "heavy cream"),
                            new Line("80", "egg yolk"),
                            new Line("160", "sucrose"),
                            new Line("3", "salt")));

    private static Reckoning of(Recipe recipe) throws BatchFault {
        return Reckoning.of(BatchReader.read("t", RecipeText.of(recipe)));
    }

    private static Recipe first(Answer answer) {
        assertFalse(answer.offers().isEmpty(), answer.said());
        return answer.offers().get(0).recipe();
    }

    @Test
    void whatIsOfferedIsScoopableFromTheFreezer() throws BatchFault {
        double ice = of(first(Wishes.SCOOPABLE.of(SORBET, 40))).curve().icePercentAt(-18);

        assertTrue(of(SORBET).curve().icePercentAt(-18) > 76);
        assertTrue(ice <= 75 + ROUNDED && ice >= 75 - WITHIN, "ice " + ice);
    }

    @Test
    void whatIsOfferedIsReadyInTime() throws BatchFault {
        double now = of(SORBET).plan().minutesToSoftServe();
        double wanted = Math.floor(0.9 * now);
        for (Offer offer : Wishes.READY.of(SORBET, wanted).offers()) {
            assertTrue(of(offer.recipe()).plan().minutesToSoftServe() <= wanted, offer.words());
        }
        assertTrue(Wishes.READY.of(SORBET, Math.ceil(now)).offers().isEmpty());
    }

    @Test
    void whatIsLessSweetKeepsItsIce() throws BatchFault {
        Reckoning was = of(SORBET);
        Reckoning is = of(first(Wishes.LESS_SWEET.of(SORBET, 40)));

        assertEquals(0.85 * Trait.SWEETNESS.of(was.mix()), Trait.SWEETNESS.of(is.mix()), ROUNDED);
        assertEquals(was.curve().icePercentAt(-12), is.curve().icePercentAt(-12), 3 * ROUNDED);
    }

    @Test
    void withoutEggItIsAsFirm() throws BatchFault {
        Reckoning is = of(first(Wishes.NO_EGG.of(CUSTARD, 40)));

        assertFalse(is.mix().allergens().contains(Allergen.EGG));
        assertEquals(
                of(CUSTARD).curve().icePercentAt(-12), is.curve().icePercentAt(-12), 0.5 + ROUNDED);
    }

    @Test
    void fifteenPerCentOfTheFatAreGone() throws BatchFault {
        double wanted = 0.85 * of(CUSTARD).mix().fatPercent();
        double is = of(first(Wishes.LESS_FAT.of(CUSTARD, 40))).mix().fatPercent();

        assertTrue(is <= wanted + ROUNDED && is >= wanted - WITHIN, "fat " + is);
    }

    @Test
    void whatIsOfferedIsSmoothAfterANight() throws BatchFault {
        Recipe tub = SORBET.by(SORBET.means().by(BatchFile.Method.SHAKEN));
        assertTrue(tastedUm(tub) > 50);
        Answer answer = Wishes.SMOOTH.of(tub, 40);

        assertFalse(answer.offers().isEmpty(), answer.said());
        for (Offer offer : answer.offers()) {
            assertTrue(tastedUm(offer.recipe()) <= 50, offer.words());
        }
        Recipe smooth = answer.offers().get(0).recipe();
        assertTrue(Wishes.SMOOTH.of(smooth, 40).offers().isEmpty());
    }

    @Test
    void keptBadlyItIsMendedByKeepingItSteady() throws BatchFault {
        Recipe bag = SORBET.by(SORBET.means().kept(new Store("14", "6", "-4", "24")));
        assertTrue(tastedUm(bag) > 50);
        Recipe steady = bag.by(bag.means().kept(bag.means().store().steady()));
        assertTrue(tastedUm(steady) < 50);
        Answer answer = Wishes.SMOOTH.of(bag, 40);

        assertTrue(answer.said().contains("kept as you say"), answer.said());
        assertTrue(
                answer.offers().stream().anyMatch(offer -> offer.recipe().equals(steady)),
                answer::toString);
    }

    @Test
    void keptBadlyItsFindingAndItsTastingOfferASteadyFreezer() throws BatchFault {
        Recipe bag = SORBET.by(SORBET.means().kept(new Store("14", "6", "-4", "24")));
        Recipe steady = bag.by(bag.means().kept(bag.means().store().steady()));
        Reckoning all = of(bag);
        Foreseen first =
                Foreseen.of(bag, all).stream()
                        .filter(one -> one.finding().symptom() == Symptom.ICY)
                        .findFirst()
                        .orElseThrow();
        assertTrue(first.finding().cause().ofKeeping(), first::toString);
        String um = Written.decimals(0, tastedUm(steady)) + " µm";
        assertTrue(first.finding().mend().contains(um), first::toString);
        assertEquals(steady, first.offers().get(0).recipe());

        Tasting.Suspected cause = Tasting.of(Symptom.ICY, bag, all).suspects().get(0);
        assertTrue(cause.cause().ofKeeping(), cause::toString);
        assertEquals(steady, cause.offers().get(0).recipe());
        assertTrue(
                Tasting.of(Symptom.ICY, steady, of(steady)).suspects().stream()
                        .noneMatch(one -> one.cause().ofKeeping()));
    }

    private static double tastedUm(Recipe recipe) throws BatchFault {
        double um = of(recipe).keeping().orElseThrow().tasted().meanUm().middle();
        BatchFile file = BatchReader.read("t", RecipeText.of(recipe));
        assertEquals(um, Keeping.tastedUm(file).orElseThrow().middle(), "both ways are the same");
        return um;
    }

    @Test
    void eachFindingSaysWhatCanBeTakenAgainstIt() throws BatchFault {
        Reckoning all = of(CUSTARD.by(CUSTARD.means().by(BatchFile.Method.TUB)));
        Recipe tub = CUSTARD.by(CUSTARD.means().by(BatchFile.Method.TUB));
        List<Foreseen> found = Foreseen.of(tub, all);

        assertEquals(all.findings(), found.stream().map(Foreseen::finding).toList());
        Foreseen icy =
                found.stream()
                        .filter(one -> one.finding().symptom() == Symptom.ICY)
                        .findFirst()
                        .orElseThrow();
        Recipe mended = icy.offers().get(0).recipe();
        assertTrue(tastedUm(mended) < tastedUm(tub));
        String um = Written.decimals(0, tastedUm(mended)) + " µm";
        assertTrue(icy.offers().get(0).words().contains("→ crystals of " + um), icy::toString);
    }

    @Test
    void whatCanNotBeSaysWhy() {
        Answer answer = Wishes.READY.of(SORBET, 1);

        assertTrue(answer.offers().isEmpty());
        assertTrue(answer.said().contains("It can’t be"), answer.said());
    }
}
