package coldwright.workbook;

import java.util.List;

/**
 * What was read from the workbook.
 *
 * @param <T> what was asked for
 * @param value what is usable of it
 * @param messages one sentence for each thing that is wrong, for the user
 */
public record LoadedWork<T>(T value, List<String> messages) {
    public LoadedWork {
        messages = List.copyOf(messages);
    }
}
