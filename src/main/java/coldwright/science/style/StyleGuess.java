package coldwright.science.style;

import coldwright.science.crystal.Method;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Guesses the style of a batch, first by its name, then by what is in it and how it is frozen. The
 * limits are judgement where no rule of law is named; one word in the recipe changes the guess.
 */
public final class StyleGuess {
    private static final double ADULT_ALCOHOL_PERCENT = 1.5;
    private static final double YOGURT_SHARE = 0.25;

    /** Yolk solids of a frozen custard, % of the mix (US 21 CFR 135.110). */
    private static final double CUSTARD_YOLK_PERCENT = 1.4;

    /** Names that say the style, in the order in which they are looked for. */
    private static final Map<Style, Pattern> CALLED = new LinkedHashMap<>();

    static {
        called(Style.SOFT_SERVE, "soft ?-?serve|softeis");
        called(Style.FROZEN_YOGURT, "fro(zen|-?)[ -]?yo(gh?urt)?\\b|jogh?urt-?eis|yogh?urt ice");
        called(Style.GRANITA, "granita|granité|slush");
        called(Style.LOLLY, "lolly|lollies|ice pop|am stiel|a stick");
        called(Style.SHERBET, "sherbet");
        called(Style.SORBET, "sorbet");
        called(Style.VEGAN, "vegan");
        called(Style.CUSTARD, "custard");
        called(Style.LOW_SUGAR, "low[ -]sugar|no[ -]sugar|zuckerarm");
    }

    private StyleGuess() {}

    private static void called(Style style, String words) {
        CALLED.put(style, Pattern.compile(words, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    }

    /**
     * The style that a batch is probably meant to be.
     *
     * @param name its name; may be empty
     * @param mix what is in it, pieces left out
     * @param method how it is frozen
     * @return the style
     */
    public static Style of(String name, Mix mix, Method method) {
        boolean strong = mix.alcoholPercent() >= ADULT_ALCOHOL_PERCENT;
        for (Map.Entry<Style, Pattern> called : CALLED.entrySet()) {
            if (called.getValue().matcher(name).find()) {
                Style style = called.getKey();
                return strong && style == Style.SORBET ? Style.ADULT : style;
            }
        }
        if (strong) {
            return Style.ADULT;
        }
        if (polyolsLead(mix)) {
            return Style.LOW_SUGAR;
        }
        double milkSolids = mix.milkSolidsNotFatPercent() + mix.milkFatPercent();
        if (milkSolids < 1) {
            return withoutMilk(mix, method);
        }
        if (yogurtShare(mix) >= YOGURT_SHARE) {
            return Style.FROZEN_YOGURT;
        }
        if (mix.composition().per100g(Tally.YOLK_SOLIDS) >= CUSTARD_YOLK_PERCENT) {
            return Style.CUSTARD;
        }
        if (milkSolids <= 5 && mix.sugarsPercent() >= 18) {
            return Style.SHERBET;
        }
        return mix.fatPercent() < 8.5 ? Style.MILK_ICE : Style.ICE_CREAM;
    }

    private static Style withoutMilk(Mix mix, Method method) {
        if (mix.fatPercent() >= 3) {
            return DietRules.plantsOnly(mix) ? Style.VEGAN : Style.CUSTARD;
        }
        boolean thin = mix.sugarsPercent() < 17;
        return thin && method == Method.SHAKEN_TUB
                ? Style.GRANITA
                : thin && method == Method.STILL_TUB ? Style.LOLLY : Style.SORBET;
    }

    private static boolean polyolsLead(Mix mix) {
        double added = mix.sugarsPercent() - mix.composition().percent(Component.LACTOSE);
        return mix.composition().percent(Component.Kind.POLYOL) > Math.max(3, added);
    }

    private static double yogurtShare(Mix mix) {
        double fermentedG = 0;
        for (Amount amount : mix.amounts()) {
            if (amount.ingredient()
                    .name()
                    .toLowerCase(Locale.ROOT)
                    .matches(".*(yogh?urt|kefir).*")) {
                fermentedG += amount.massG();
            }
        }
        return fermentedG / mix.massG();
    }
}
