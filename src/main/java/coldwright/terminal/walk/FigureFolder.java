package coldwright.terminal.walk;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.figure.Drawing;
import coldwright.figure.DrawingDescription;
import coldwright.figure.Exhibit;
import coldwright.paint.FigureFiles;
import coldwright.text.TemporaryFolders;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The folder for a walk's figures; a temporary one is created with the first figure. */
public final class FigureFolder {
    private static final List<String> FORMATS = List.of("svg", "png");

    private final String lessonName;
    private Optional<Path> folder;
    private int count;

    private FigureFolder(String lessonName, Optional<Path> folder) {
        this.lessonName = lessonName;
        this.folder = folder;
    }

    /** A new temporary folder, named after the lesson. */
    public static FigureFolder temporary(String lessonName) {
        return new FigureFolder(lessonName, Optional.empty());
    }

    /** A folder of the user's choice, created if missing; refuses one that isn't writable. */
    public static FigureFolder at(Path folder) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new IllegalArgumentException(text("figures.a-file", folder));
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new IllegalArgumentException(text("figures.not-made", folder), e);
        }
        if (!Files.isWritable(folder)) {
            throw new IllegalArgumentException(text("figures.not-writable", folder));
        }
        return new FigureFolder("", Optional.of(folder));
    }

    /** Writes a figure, or a drawing's first, middle and last moment, numbered as walked. */
    List<Path> write(Exhibit exhibit) throws IOException {
        if (folder.isEmpty()) {
            String tidy = lessonName.replaceAll("[^A-Za-z0-9-]+", "-");
            folder = Optional.of(TemporaryFolders.create(tidy));
        }
        count++;
        List<Path> files = new ArrayList<>();
        for (String format : FORMATS) {
            for (int moment : FigureFiles.moments(exhibit)) {
                Path file = fileFor(exhibit, moment, format);
                FigureFiles.write(exhibit, moment, file);
                files.add(file);
            }
        }
        return files;
    }

    private Path fileFor(Exhibit exhibit, int moment, String format) {
        String name = FigureFiles.nameFor(exhibit, format);
        int end = name.length() - format.length() - 1;
        String full = name.substring(0, end) + momentName(exhibit, moment) + name.substring(end);
        return folder.orElseThrow().resolve(String.format(Locale.ROOT, "%02d-%s", count, full));
    }

    /** Such as {@code -3-at-12-min}; empty for a drawing that does not change. */
    private static String momentName(Exhibit exhibit, int moment) {
        if (!(exhibit instanceof Drawing drawing) || drawing.moments().size() < 2) {
            return "";
        }
        String time =
                DrawingDescription.time(drawing, moment)
                        .replaceAll("[^A-Za-z0-9.]+", "-")
                        .replaceAll("^-|-$", "");
        return "-" + (moment + 1) + (time.isEmpty() ? "" : "-at-" + time);
    }
}
