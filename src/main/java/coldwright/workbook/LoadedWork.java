package coldwright.workbook;

import java.util.List;

/**
 * The usable part of a value loaded from the workbook, and one sentence for the user for each
 * error.
 */
public record LoadedWork<T>(T value, List<String> messages) {
    public LoadedWork {
        messages = List.copyOf(messages);
    }
}
