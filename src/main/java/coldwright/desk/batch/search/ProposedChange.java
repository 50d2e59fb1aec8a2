package coldwright.desk.batch.search;

import coldwright.batch.Recipe;

import java.util.List;

/**
 * A change that reaches a goal or fixes a fault.
 *
 * @param words the change, and its effect on the goal
 * @param besides its side effects
 * @param recipe the recipe with the change
 */
public record ProposedChange(String words, List<String> besides, Recipe recipe) {
    public ProposedChange {
        besides = List.copyOf(besides);
    }
}
