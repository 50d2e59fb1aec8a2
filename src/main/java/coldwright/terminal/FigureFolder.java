package coldwright.terminal;

import coldwright.figure.Figure;
import coldwright.paint.FigureFiles;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The folder that a walk writes its figures to; a temporary one is made with the first figure. */
final class FigureFolder {
    private static final List<String> FORMATS = List.of("svg", "png");

    private final String lessonName;
    private Optional<Path> folder;
    private int count;

    private FigureFolder(String lessonName, Optional<Path> folder) {
        this.lessonName = lessonName;
        this.folder = folder;
    }

    /** A new folder among the user's temporary files, named after the lesson. */
    static FigureFolder temporary(String lessonName) {
        return new FigureFolder(lessonName, Optional.empty());
    }

    /**
     * A folder of the user's choice, made if it is not there.
     *
     * @throws IllegalArgumentException if it can't be made or written to
     */
    static FigureFolder at(Path folder) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new IllegalArgumentException(
                    folder + " is a file; give a folder for the figures, or none");
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    folder + " can't be made; give a folder for the figures that you may write to",
                    e);
        }
        if (!Files.isWritable(folder)) {
            throw new IllegalArgumentException(
                    folder + " can't be written to; give another folder for the figures");
        }
        return new FigureFolder("", Optional.of(folder));
    }

    /**
     * Writes a figure, numbered in the order of the walk.
     *
     * @param figure the figure
     * @return the files
     * @throws IOException if they can't be written
     */
    List<Path> write(Figure figure) throws IOException {
        if (folder.isEmpty()) {
            String tidy = lessonName.replaceAll("[^A-Za-z0-9-]+", "-");
            folder = Optional.of(Files.createTempDirectory("coldwright-" + tidy + "-"));
        }
        count++;
        List<Path> files = new ArrayList<>();
        for (String format : FORMATS) {
            String name = "%02d-%s".formatted(count, FigureFiles.nameFor(figure, format));
            Path file = folder.get().resolve(name);
            FigureFiles.write(figure, file);
            files.add(file);
        }
        return files;
    }
}
