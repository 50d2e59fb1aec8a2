package coldwright.science.plan;

import static coldwright.science.plan.Finding.phrase;

import coldwright.science.Band;
import coldwright.science.mix.Allergen;
import coldwright.science.style.DietRules;
import coldwright.science.style.StyleQuantity;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A plan in words: what to do, what it changes, and what it leaves. */
public final class PlanSentences {
    /** A change of less than this share of a step isn't worth a line. */
    private static final double NOTABLE_STEPS = 0.04;

    private static final double NOTABLE_FREEZING_C = 0.05;

    private PlanSentences() {}

    /**
     * What to do, in the order in which a cook does it.
     *
     * @return one phrase for each change of amounts, method, temperature or style
     */
    public static List<Phrase> steps(Plan plan) {
        List<Phrase> steps = new ArrayList<>();
        plan.changes().forEach(change -> steps.add(change.phrase()));
        Making was = plan.before().making();
        Making is = plan.after().making();
        if (is.method() != was.method()) {
            steps.add(phrase("method." + is.method().name()));
        }
        if (is.iceG() > 0 && is.iceG() != was.iceG()) {
            steps.add(phrase("bath", is.iceG(), is.saltG()));
        }
        if (is.overrunPercent() != was.overrunPercent()) {
            steps.add(phrase("air", is.overrunPercent()));
        }
        if (is.steady() && !was.steady()) {
            steps.add(phrase("steady"));
        }
        boolean restyled = plan.after().style() != plan.before().style();
        if (restyled) {
            steps.add(phrase("style", plan.after().style().phrase(), is.servingC()));
        } else if (is.servingC() != was.servingC()) {
            steps.add(phrase("serve", is.servingC()));
        }
        Set<Allergen> more = EnumSet.noneOf(Allergen.class);
        more.addAll(plan.after().batch().allergens());
        more.removeAll(plan.before().batch().allergens());
        if (!more.isEmpty()) {
            steps.add(phrase("brings-allergen", more.stream().map(Allergen::phrase).toList()));
        }
        return steps;
    }

    /**
     * What it changes besides: each quantity before and after.
     *
     * @return one phrase for each notable change
     */
    public static List<Phrase> effects(Plan plan) {
        List<Phrase> effects = new ArrayList<>();
        BatchState before = plan.before();
        BatchState after = plan.after();
        for (StyleQuantity quantity : StyleQuantity.values()) {
            boolean shown =
                    quantity != StyleQuantity.LACTOSE
                            && quantity != StyleQuantity.SERVING
                            && quantity != StyleQuantity.OVERRUN
                            && quantity != StyleQuantity.CRYSTALS
                            && quantity != StyleQuantity.ICE_IN_THE_COLD;
            double was = before.of(quantity);
            double is = after.of(quantity);
            if (shown && Math.abs(is - was) >= NOTABLE_STEPS * quantity.step()) {
                double scale = Finding.scale(quantity);
                effects.add(phrase("effect." + quantity.name(), scale * was, scale * is));
            }
        }
        double wasC = before.curve().initialFreezingPointC();
        double isC = after.curve().initialFreezingPointC();
        if (Math.abs(isC - wasC) >= NOTABLE_FREEZING_C) {
            effects.add(phrase("effect.freezing-point", wasC, isC));
            effects.add(
                    phrase("effect.pac", before.pieces().mix().pac(), after.pieces().mix().pac()));
        }
        crystals(before.frozen().crystalsUm(), after.frozen().crystalsUm()).ifPresent(effects::add);
        return effects;
    }

    private static Optional<Phrase> crystals(Optional<Band> before, Optional<Band> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return after.map(um -> phrase("effect.new-crystals", um.middle(), um.low(), um.high()));
        }
        boolean notable = Math.abs(after.get().middle() - before.get().middle()) >= 1;
        return notable
                ? Optional.of(
                        phrase("effect.crystals", before.get().middle(), after.get().middle()))
                : Optional.empty();
    }

    /** {@return one phrase for each fault that is left} */
    public static List<Phrase> left(Plan plan) {
        return plan.left().stream()
                .map(
                        left ->
                                phrase(
                                        "left",
                                        left.fault().fault().phrase(),
                                        why(left, plan.before().diet())))
                .toList();
    }

    private static Phrase why(Plan.Left left, DietRules diet) {
        boolean stated = !diet.rules().isEmpty();
        return left.why() == Plan.Why.NO_INGREDIENT
                ? phrase(stated ? "why.NO_INGREDIENT.diet" : "why.NO_INGREDIENT")
                : phrase("why." + left.why().name());
    }
}
