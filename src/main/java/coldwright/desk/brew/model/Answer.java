package coldwright.desk.brew.model;

import java.util.List;

/**
 * What came of a wish.
 *
 * @param wish what was wished, in plain words
 * @param said what there is to say: that it is so already, or why it can't be; may be empty
 * @param offers changes that grant it, the smallest first
 */
public record Answer(String wish, String said, List<Offer> offers) {
    public Answer {
        offers = List.copyOf(offers);
    }
}
