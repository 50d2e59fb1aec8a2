package coldwright.figure;

import java.util.List;

/**
 * What a snippet can put on the page: a chart, or a drawing to scale.
 *
 * <p>Both are plain data; nothing in them can change.
 */
public sealed interface Exhibit permits Figure, Drawing {
    /**
     * What it shows.
     *
     * @return its title
     */
    String title();

    /**
     * Alternative text by the author.
     *
     * @return the text; empty to have it computed from the data
     */
    String writtenText();

    /**
     * Where data or model come from.
     *
     * @return the sources, may be none
     */
    List<String> sources();
}
