package coldwright.workbook.entry;

import coldwright.text.TextFault;

import java.util.List;

/**
 * What could be read of a text, and what could not.
 *
 * @param <T> what was read
 * @param value what is usable
 * @param faults one sentence for each fault, with its line
 */
public record ParsedEntries<T>(T value, List<TextFault> faults) {
    public ParsedEntries {
        faults = List.copyOf(faults);
    }
}
