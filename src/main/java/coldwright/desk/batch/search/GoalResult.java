package coldwright.desk.batch.search;

import java.util.List;

/**
 * The result of a search for a goal.
 *
 * @param goal the goal, in plain words
 * @param text that it is reached already, or why it can't be; may be empty
 * @param offers changes that reach it, the smallest first
 */
public record GoalResult(String goal, String text, List<ProposedChange> offers) {
    public GoalResult {
        offers = List.copyOf(offers);
    }
}
