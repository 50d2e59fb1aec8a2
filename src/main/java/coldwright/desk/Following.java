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
 * Follows the files of lessons that lie on the desk, so that an author sees the page while writing.
 * It looks at them again and again, which works on every kind of drive.
 */
final class Following {
    private static final int LOOK_EACH_MS = 300;

    /** A file that was away when it was first looked for; it may come back. */
    private static final Stand GONE = new Stand(FileTime.fromMillis(0), -1, true);

    /** How a file stood; a change counts once two looks have found it the same. */
    private record Stand(FileTime changed, long bytes, boolean told) {}

    private final Map<Path, Stand> stands = new ConcurrentHashMap<>();
    private final DeskModel desk;
    private final Executor window;

    Following(DeskModel desk, ScheduledExecutorService clock, Executor window) {
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
        stands.keySet().retainAll(files);
        for (Path file : files) {
            try {
                stands.putIfAbsent(file, stand(file, false));
            } catch (IOException e) {
                stands.putIfAbsent(file, GONE);
            }
        }
    }

    private static Stand stand(Path file, boolean told) throws IOException {
        return new Stand(Files.getLastModifiedTime(file), Files.size(file), told);
    }

    private void look() {
        for (Map.Entry<Path, Stand> known : stands.entrySet()) {
            Path file = known.getKey();
            Stand was = known.getValue();
            try {
                Stand is = stand(file, false);
                boolean same = is.changed().equals(was.changed()) && is.bytes() == was.bytes();
                if (!same) {
                    stands.replace(file, was, is);
                } else if (!was.told()) {
                    if (stands.replace(file, was, new Stand(is.changed(), is.bytes(), true))) {
                        window.execute(() -> desk.refresh(file));
                    }
                }
            } catch (IOException e) {
                // being replaced just now; the next look finds it
            }
        }
    }
}
