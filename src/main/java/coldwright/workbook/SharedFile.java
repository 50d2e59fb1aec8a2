package coldwright.workbook;

import static coldwright.workbook.entry.WorkbookText.text;

import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.entry.ThreeWay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A file that several windows may write. A change is merged with changes of other windows since
 * this one last saw the file. A state that can't be merged is copied first.
 */
final class SharedFile<T> {
    private final WorkbookFiles store;
    private final Path file;

    /** The page's value at the last load or save. */
    private Optional<T> given = Optional.empty();

    /** The file's value at that time: the page's, merged with those of other windows. */
    private Optional<T> kept = Optional.empty();

    SharedFile(WorkbookFiles store, Path file) {
        this.store = store;
        this.file = file;
    }

    /** The part of a file's content that this window had not seen. */
    private record Theirs<T>(T value, String mark, boolean whole) {}

    /** The page shows this value, which is also the file's. */
    void shows(Optional<T> value) {
        given = value;
        kept = value;
    }

    /** The page now has this value, which was saved before. */
    void given(T value) {
        given = Optional.of(value);
    }

    Saved<T> save(T mine, Form<T> form, String about, String what) {
        boolean first = given.isEmpty() && !Files.exists(file);
        T base = form.fitted().apply(given.orElseGet(() -> form.none().apply(mine)), mine);
        Theirs<T> theirs;
        try {
            theirs = theirs(mine, base, form);
        } catch (IOException e) {
            return new Saved<>(mine, Optional.of(WorkbookFiles.sentence(text("unsaved", what), e)));
        }
        ThreeWay.Merged<T> merged = form.merger().of(base, mine, theirs.value());
        Optional<String> failure = Optional.empty();
        if (first || !form.same(merged.value(), theirs.value())) {
            boolean all = theirs.whole() && !merged.clash();
            failure =
                    store.write(
                            file,
                            about,
                            what,
                            form.writer().apply(merged.value()),
                            all ? theirs.mark() : "");
        } else if (theirs.whole()) {
            store.files().saw(file, theirs.mark());
        }
        if (failure.isEmpty()) {
            given = Optional.of(mine);
            kept = Optional.of(merged.value());
        }
        return new Saved<>(failure.isEmpty() ? merged.value() : mine, failure);
    }

    private Theirs<T> theirs(T mine, T base, Form<T> form) throws IOException {
        T before = form.fitted().apply(kept.orElse(base), mine);
        if (!Files.exists(file) || !store.files().isUnseen(file)) {
            return new Theirs<>(before, store.files().mark(file), true);
        }
        WorkbookFiles.FileContent fileContent = store.read(file);
        String text = fileContent.text().orElse("");
        Optional<ParsedEntries<Optional<T>>> parsed = fileContent.text().map(form.reader());
        Optional<T> read = parsed.flatMap(ParsedEntries::value);
        boolean whole =
                fileContent.messages().equals(List.of())
                        && read.map(form.writer()).filter(text::equals).isPresent();
        return new Theirs<>(
                read.map(one -> form.fitted().apply(one, mine)).orElse(before),
                fileContent.mark(),
                whole);
    }
}
