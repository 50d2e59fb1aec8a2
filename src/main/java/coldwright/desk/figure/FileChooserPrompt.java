package coldwright.desk.figure;

import coldwright.desk.messages.Messages;

import javafx.stage.FileChooser;
import javafx.stage.Window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks for a file to save to. */
@FunctionalInterface
public interface FileChooserPrompt {
    /** Asks with the system's dialog. */
    FileChooserPrompt BY_DIALOG = FileChooserPrompt::dialog;

    /**
     * Asks for a file in a window, with a suggested name without extension and the possible
     * extensions, the usual one first; empty if cancelled.
     */
    Optional<Path> where(String name, List<String> endings, Window over);

    private static Optional<Path> dialog(String name, List<String> endings, Window over) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Messages.of("figure.save"));
        chooser.setInitialFileName(name + "." + endings.get(0));
        for (String ending : endings) {
            chooser.getExtensionFilters()
                    .add(
                            new FileChooser.ExtensionFilter(
                                    Messages.of("figure.save." + ending), "*." + ending));
        }
        File file = chooser.showSaveDialog(over);
        if (file == null) {
            return Optional.empty();
        }
        boolean ended = endings.stream().anyMatch(one -> file.getName().endsWith("." + one));
        String chosen =
                chooser.getSelectedExtensionFilter() == null
                        ? endings.get(0)
                        : chooser.getSelectedExtensionFilter().getExtensions().get(0).substring(2);
        return Optional.of(ended ? file.toPath() : Path.of(file.getPath() + "." + chosen));
    }
}
