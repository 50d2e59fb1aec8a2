package coldwright.figure;

import java.util.List;

/**
 * Something that a snippet can show: a chart, or a drawing to scale.
 *
 * <p>Both are immutable data.
 */
public sealed interface Exhibit permits Figure, Drawing {
    /**
     * The title.
     *
     * @return what it shows
     */
    String title();

    /**
     * Alternative text by the author.
     *
     * @return empty to have it computed from the data
     */
    String writtenText();

    /**
     * The sources of data or model.
     *
     * @return may be empty
     */
    List<String> sources();
}
