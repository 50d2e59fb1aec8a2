package coldwright.workbook;

import static coldwright.workbook.entry.WorkbookText.text;

import coldwright.text.TextFault;
import coldwright.text.TextFile;
import coldwright.text.WholeFile;
import coldwright.workbook.work.LessonKey;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The files of a workbook, and messages for read and write errors. */
final class WorkbookFiles {
    /** A long lesson's work has 20,000 characters; a learner may paste a book. */
    private static final int MOST_CHARACTERS = 16_000_000;

    /** A character is at most three bytes of UTF-8, or one of a pair that has four. */
    private static final int MOST_BYTES = 3 * MOST_CHARACTERS;

    private static final String ENDING = ".txt";
    static final String SETTINGS = "settings" + ENDING;
    static final String AGREED = "agreed" + ENDING;
    private static final String LESSONS = "lessons";
    private static final String PUT_AWAY = "put-away-";

    private final Path folder;
    private final KeptFiles files;

    WorkbookFiles(Path folder) {
        this.folder = folder;
        this.files = new KeptFiles(folder);
    }

    KeptFiles files() {
        return files;
    }

    /**
     * The content of a file, if there is one: its {@link KeptFiles#mark} from before it was read,
     * its text, if any, and its errors.
     */
    record FileContent(String mark, Optional<String> text, List<String> messages) {}

    Path fileOf(LessonKey key) {
        return folder.resolve(LESSONS).resolve(key.name() + ENDING);
    }

    Path settingsFile() {
        return folder.resolve(SETTINGS);
    }

    Path agreedFile() {
        return folder.resolve(AGREED);
    }

    void sweep() {
        Stream.of("", LESSONS, KeptFiles.COPIES)
                .map(folder::resolve)
                .filter(Files::isDirectory)
                .forEach(WholeFile::sweep);
    }

    FileContent read(Path file) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new FileContent("", Optional.empty(), List.of());
        }
        String mark = markOf(file);
        TextFile read = TextFile.read(file, MOST_BYTES);
        return new FileContent(mark, read.text(), messages(file, read.faults()));
    }

    /** An unreadable file has no mark, so it counts as unseen. */
    private String markOf(Path file) {
        try {
            return files.mark(file);
        } catch (IOException e) {
            return "";
        }
    }

    /** Errors as messages: file, line, sentence. */
    List<String> messages(Path file, List<TextFault> faults) {
        return faults.stream()
                .map(
                        fault ->
                                fault.line() > 0
                                        ? "%s:%d: %s"
                                                .formatted(
                                                        file.getFileName(),
                                                        fault.line(),
                                                        fault.words())
                                        : "%s: %s".formatted(file.getFileName(), fault.words()))
                .toList();
    }

    /** Sets a damaged file aside and adds a message; returns the error if that fails. */
    Optional<String> setAside(Path file, List<String> messages) {
        try {
            Path to = files.setAside(file);
            messages.add(text("damaged", file.getFileName(), to.toAbsolutePath()));
            return Optional.empty();
        } catch (IOException e) {
            String sentence = sentence(text("damaged.not-renamed", file.getFileName()), e);
            messages.add(sentence);
            return Optional.of(sentence);
        }
    }

    /**
     * Writes a file through {@link KeptFiles}.
     *
     * @param about its subject
     * @param what the content that can't be saved, for the message
     * @param merged the mark of a state that the text includes completely
     * @return why it was not written, one sentence
     */
    Optional<String> write(Path file, String about, String what, String text, String merged) {
        if (text.length() > MOST_CHARACTERS) {
            return Optional.of(text("unsaved.large", what, text.length(), MOST_CHARACTERS));
        }
        try {
            files.write(file, text, about, merged);
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(text("unsaved.kept", sentence(text("unsaved", what), e)));
        }
    }

    Saved<Optional<Path>> archive() {
        Optional<Path> to = Optional.empty();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path one : all.filter(WorkbookFiles::isKept).sorted().toList()) {
                if (to.isEmpty()) {
                    to = Optional.of(DatedFiles.newDatedFolder(folder, LocalDateTime.now()));
                }
                Files.move(one, to.get().resolve(one.getFileName()));
            }
            files.forgetAll();
            return new Saved<>(to, Optional.empty());
        } catch (IOException e) {
            return new Saved<>(to, Optional.of(sentence(text("archive.failed"), e)));
        }
    }

    private static boolean isKept(Path file) {
        String name = file.getFileName().toString();
        return !name.equals("lock") && !name.startsWith(PUT_AWAY);
    }

    /** The system's error message as the end of a sentence. */
    static String sentence(String what, IOException trouble) {
        String words =
                trouble instanceof FileSystemException system && system.getReason() != null
                        ? system.getReason()
                        : String.valueOf(trouble.getMessage());
        String low = words.toLowerCase(Locale.ROOT);
        boolean closed =
                trouble instanceof AccessDeniedException
                        || low.contains("read-only")
                        || low.contains("denied");
        boolean full = low.contains("space") || low.contains("quota") || low.contains("too large");
        return text(closed ? "because.closed" : full ? "because.full" : "because", what, words);
    }
}
