package coldwright.help;

import java.util.Optional;

/**
 * Something that may stand at the caret.
 *
 * @param label what the list shows, such as {@code icePercentAt(temperatureC in °C) → %}
 * @param insert what takes the place of the text from {@code from} to the caret
 * @param from where that place begins, characters from the snippet's start
 * @param help a line on it; may be empty
 * @param entry the whole of what is known of it, if anything is
 */
public record Suggestion(
        String label, String insert, int from, String help, Optional<HelpEntry> entry) {}
