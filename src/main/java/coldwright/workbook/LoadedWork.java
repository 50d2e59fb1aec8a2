package coldwright.workbook;

import java.util.List;

/** The usable part of a value from the workbook, and one sentence for each error. */
public record LoadedWork<T>(T value, List<String> messages) {
    public LoadedWork {
        messages = List.copyOf(messages);
    }
}
