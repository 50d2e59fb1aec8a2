package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.workbook.handin.HandIn;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Hand-ins in a folder or the folders in it, by name, and files that may have been meant. */
public record HandInFiles(List<Path> files, List<Path> leftAlone) {
    /** A class has thirty; a school may have this many. */
    private static final int MOST = 2000;

    private static final int DEEPEST = 2;

    public HandInFiles {
        files = List.copyOf(files);
        leftAlone = List.copyOf(leftAlone);
    }

    /** Whether an argument on the command line names a hand-in or a folder of hand-ins. */
    public static boolean areMeantBy(String word) {
        try {
            return word.endsWith(HandIn.ENDING)
                    || Files.isDirectory(Path.of(word)) && !in(Path.of(word)).files().isEmpty();
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** The hand-ins that an argument names; refuses a folder with too many. */
    static HandInFiles of(String word) {
        Path path = Path.of(word);
        HandInFiles found =
                Files.isDirectory(path) ? in(path) : new HandInFiles(List.of(), List.of());
        return found.files().isEmpty() ? new HandInFiles(List.of(path), List.of()) : found;
    }

    private static HandInFiles in(Path folder) {
        List<Path> here = list(folder, 1);
        boolean lessons = here.stream().anyMatch(file -> named(file, ".md"));
        boolean direct = here.stream().anyMatch(file -> named(file, HandIn.ENDING));
        List<Path> all = direct || lessons ? here : list(folder, DEEPEST);
        List<Path> files = all.stream().filter(file -> named(file, HandIn.ENDING)).toList();
        if (files.size() > MOST) {
            throw new IllegalArgumentException(
                    text("hand-ins.too-many", folder, files.size(), MOST));
        }
        List<Path> others =
                all.stream()
                        .filter(file -> !named(file, HandIn.ENDING))
                        .filter(file -> !named(file, ".md") && !named(file, ".csv"))
                        .filter(file -> !file.getFileName().toString().startsWith("."))
                        .filter(file -> !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS))
                        .toList();
        return new HandInFiles(files, files.isEmpty() ? List.of() : others);
    }

    private static boolean named(Path file, String ending) {
        return file.getFileName().toString().endsWith(ending);
    }

    /** The content of a folder, without following links; empty if it can't be opened. */
    private static List<Path> list(Path folder, int deep) {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path entry : entries.sorted().toList()) {
                boolean inside = deep > 1 && Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS);
                found.addAll(
                        inside && !named(entry, HandIn.ENDING)
                                ? list(entry, deep - 1)
                                : List.of(entry));
            }
        } catch (IOException | UncheckedIOException e) {
            return found;
        }
        return found;
    }
}
