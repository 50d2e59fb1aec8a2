package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchKitchen;
import coldwright.batch.Recipe;
import coldwright.desk.messages.Messages;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A change that reaches a goal or fixes a fault.
 *
 * @param words the change, and its effect on the goal
 * @param besides its side effects, then what it leaves
 * @param recipe the recipe with the change
 */
public record ProposedChange(String words, List<String> besides, Recipe recipe) {
    public ProposedChange {
        besides = List.copyOf(besides);
    }

    /**
     * The plans that resolve the findings of a batch. Takes up to half a second.
     *
     * @return at most three, the best first; empty if nothing helps
     */
    public static List<ProposedChange> of(BatchAnalysis all) {
        return of(all.batch(), all.plans());
    }

    /** Plans for a recipe as changes to take; those without a change are left out. */
    static List<ProposedChange> of(Recipe recipe, List<Plan> plans) {
        return plans.stream()
                .filter(plan -> !PlanSentences.steps(plan).isEmpty())
                .map(plan -> of(recipe, plan))
                .toList();
    }

    private static ProposedChange of(Recipe recipe, Plan plan) {
        String steps =
                PlanSentences.steps(plan).stream()
                        .map(Phrase::shown)
                        .collect(Collectors.joining("; "));
        List<String> besides = new ArrayList<>();
        PlanSentences.effects(plan).forEach(one -> besides.add(one.shown()));
        PlanSentences.left(plan).forEach(one -> besides.add(one.shown()));
        return new ProposedChange(
                Messages.of(
                        "batch.plan",
                        DisplayText.sentence(plan.character().phrase().shown())
                                .replaceFirst("\\.$", ""),
                        steps),
                besides,
                new BatchKitchen(recipe).with(plan));
    }
}
