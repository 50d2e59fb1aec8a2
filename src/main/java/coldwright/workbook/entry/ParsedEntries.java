package coldwright.workbook.entry;

import coldwright.text.TextFault;

import java.util.List;

/** The usable part of a text, and one sentence for each error, with its line. */
public record ParsedEntries<T>(T value, List<TextFault> faults) {
    public ParsedEntries {
        faults = List.copyOf(faults);
    }
}
