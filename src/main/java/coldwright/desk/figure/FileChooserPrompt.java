package coldwright.desk.figure;

import coldwright.desk.messages.Messages;

import javafx.stage.FileChooser;
import javafx.stage.Window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks where a file shall go. */
@FunctionalInterface
public interface FileChooserPrompt {
    /** Asks in the system's own dialog. */
    FileChooserPrompt BY_DIALOG = FileChooserPrompt::dialog;

    /**
     * Asks.
     *
     * @param name what the file may be called, without ending
     * @param endings what it may end in, the usual first
     * @param over the window that asks
     * @return the file; none if there shall be none
     */
    Optional<Path> where(String name, List<String> endings, Window over);

    private static Optional<Path> dialog(String name, List<String> endings, Window over) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Messages.of("plate.save"));
        chooser.setInitialFileName(name + "." + endings.get(0));
        for (String ending : endings) {
            chooser.getExtensionFilters()
                    .add(
                            new FileChooser.ExtensionFilter(
                                    Messages.of("plate.save." + ending), "*." + ending));
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
