package coldwright.workbook;

import java.util.List;

/**
 * A value loaded from the workbook.
 *
 * @param <T> type of the value
 * @param value the usable part
 * @param messages one sentence for the user for each error
 */
public record LoadedWork<T>(T value, List<String> messages) {
    public LoadedWork {
        messages = List.copyOf(messages);
    }
}
