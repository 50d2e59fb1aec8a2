package coldwright.desk.batch.search;

import coldwright.batch.Recipe;

import java.util.List;

/**
 * A change that grants a wish or mends a fault.
 *
 * @param words what to do, and what it does to what was wished
 * @param besides what else it changes
 * @param recipe the recipe with the change
 */
public record ProposedChange(String words, List<String> besides, Recipe recipe) {
    public ProposedChange {
        besides = List.copyOf(besides);
    }
}
