package coldwright.desk.batch.search;

import java.util.List;

/**
 * What came of a wish.
 *
 * @param goal what was wished, in plain words
 * @param text what there is to say: that it is so already, or why it can't be; may be empty
 * @param offers changes that grant it, the smallest first
 */
public record GoalResult(String goal, String text, List<ProposedChange> offers) {
    public GoalResult {
        offers = List.copyOf(offers);
    }
}
