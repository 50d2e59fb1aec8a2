package coldwright.help;

import java.util.Optional;

/**
 * A completion at the caret.
 *
 * @param label text in the list, such as {@code icePercentAt(temperatureC in °C) → %}
 * @param insert text that replaces the text from {@code from} to the caret
 * @param from start of the replaced text, characters from the snippet's start
 * @param help one line of help; may be empty
 * @param entry the full help, if any
 */
public record Suggestion(
        String label, String insert, int from, String help, Optional<HelpEntry> entry) {}
