package coldwright.desk.page;

import coldwright.lesson.LessonPack;

import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** Opens lesson files, folders and zip files that are dropped on the window. */
final class DroppedFiles {
    private DroppedFiles() {}

    /** Opens files dropped on a node, unless a child consumes them. */
    static void on(Node node, Consumer<Path> open) {
        node.setOnDragOver(
                event -> {
                    if (!lessons(filesOf(event)).isEmpty()) {
                        event.acceptTransferModes(TransferMode.COPY);
                        event.consume();
                    }
                });
        node.setOnDragDropped(
                event -> {
                    List<Path> dropped = lessons(filesOf(event));
                    dropped.forEach(open);
                    event.setDropCompleted(!dropped.isEmpty());
                    event.consume();
                });
    }

    private static List<File> filesOf(DragEvent event) {
        Dragboard board = event.getDragboard();
        return board.hasFiles() ? board.getFiles() : List.of();
    }

    /** The files that can be opened: lessons, folders and zip files. */
    static List<Path> lessons(List<File> files) {
        return files.stream()
                .map(File::toPath)
                .filter(file -> file.toString().endsWith(".md") || LessonPack.isOne(file))
                .toList();
    }
}
