package coldwright.desk;

import coldwright.desk.model.DeskModel;

import javafx.beans.InvalidationListener;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * Watches the files of open lessons, so that an author sees the page while writing. It polls, which
 * works on every kind of drive.
 */
final class LessonFileWatcher {
    private static final int LOOK_EACH_MS = 300;

    /** A file that didn't exist when it was first checked; it may come back. */
    private static final FileState GONE = new FileState(FileTime.fromMillis(0), -1, true);

    /** State of a file; a change counts once two checks have found the same state. */
    private record FileState(FileTime changed, long bytes, boolean reported) {}

    private final Map<Path, FileState> states = new ConcurrentHashMap<>();
    private final DeskModel desk;
    private final Executor window;

    LessonFileWatcher(DeskModel desk, ScheduledExecutorService clock, Executor window) {
        this.desk = desk;
        this.window = window;
        InvalidationListener listener = value -> followTheseLessons();
        desk.lessons().addListener(listener);
        clock.scheduleWithFixedDelay(this::look, LOOK_EACH_MS, LOOK_EACH_MS, TimeUnit.MILLISECONDS);
    }

    private void followTheseLessons() {
        Set<Path> files =
                desk.lessons().stream()
                        .flatMap(lesson -> lesson.ownFile().stream())
                        .collect(Collectors.toSet());
        states.keySet().retainAll(files);
        for (Path file : files) {
            try {
                states.putIfAbsent(file, stateOf(file, false));
            } catch (IOException e) {
                states.putIfAbsent(file, GONE);
            }
        }
    }

    private static FileState stateOf(Path file, boolean told) throws IOException {
        return new FileState(Files.getLastModifiedTime(file), Files.size(file), told);
    }

    private void look() {
        for (Map.Entry<Path, FileState> known : states.entrySet()) {
            Path file = known.getKey();
            FileState was = known.getValue();
            try {
                FileState is = stateOf(file, false);
                boolean same = is.changed().equals(was.changed()) && is.bytes() == was.bytes();
                if (!same) {
                    states.replace(file, was, is);
                } else if (!was.reported()) {
                    if (states.replace(file, was, new FileState(is.changed(), is.bytes(), true))) {
                        window.execute(() -> desk.refresh(file));
                    }
                }
            } catch (IOException e) {
                // being replaced just now; the next check finds it
            }
        }
    }
}
