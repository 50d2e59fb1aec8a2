package coldwright.figure;

import java.util.List;

/**
 * Something that a snippet can show: a chart, or a drawing to scale.
 *
 * <p>Both are immutable data.
 */
public sealed interface Exhibit permits Figure, Drawing {
    /** {@return what it shows} */
    String title();

    /** {@return alternative text by the author, empty to have it computed from the data} */
    String writtenText();

    /** {@return the sources of data or model; may be empty} */
    List<String> sources();

    /** {@return the points that count towards the limit, of all series, pieces and moments} */
    long size();
}
