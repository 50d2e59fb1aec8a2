package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;

/**
 * Whatever two windows do, in whatever order: a text that was typed and saved is in a file of the
 * data folder. It may be gone only once a window that showed it has saved another text that was
 * typed in its place there.
 */
class TwoKeepersLawsTest {
    private static final long FIRST_SEED = 20_261_130;
    private static final int RUNS = 16;
    private static final int DEEDS = 40;

    @TempDir Path folder;

    static LongStream seeds() {
        return LongStream.range(FIRST_SEED, FIRST_SEED + RUNS);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noSavedTextIsLost(long seed) throws IOException {
        new Run(seed).go();
    }

    /** One order of things. */
    private final class Run {
        private final long seed;
        private final Random random;
        private final TwoWindows windows = new TwoWindows(folder);
        private final TwoWindows.Window[] open = new TwoWindows.Window[2];

        private final Set<String> saved = new TreeSet<>();
        private final Set<String> gone = new TreeSet<>();
        private final Map<TwoWindows.Window, Set<String>> typed = new HashMap<>();
        private final Map<TwoWindows.Window, Set<String>> typedOver = new HashMap<>();
        private final List<String> story = new ArrayList<>();
        private int number;

        Run(long seed) {
            this.seed = seed;
            this.random = new Random(seed);
        }

        void go() throws IOException {
            for (int i = 0; i < DEEDS; i++) {
                deed();
                look();
            }
            for (int i = 0; i < open.length; i++) {
                if (open[i] != null) {
                    story.add("close " + i);
                    close(i);
                    look();
                }
            }
        }

        private void deed() throws IOException {
            int which = random.nextInt(open.length);
            TwoWindows.Window window = open[which];
            if (window == null) {
                story.add("open " + which);
                open[which] = windows.open();
                typed.put(open[which], new TreeSet<>());
                typedOver.put(open[which], new TreeSet<>());
                return;
            }
            switch (random.nextInt(10)) {
                case 0 -> {
                    story.add("close " + which);
                    close(which);
                }
                case 1 -> {
                    story.add("crash " + which);
                    window.crash();
                    open[which] = null;
                }
                case 2, 3 -> {
                    story.add("focus " + which);
                    window.focus();
                }
                case 4, 5, 6 -> {
                    story.add("pass " + which);
                    boolean kept = window.workbook().keeps();
                    window.pass();
                    if (kept) {
                        hasSaved(window);
                    }
                }
                default -> type(which, window);
            }
        }

        private void close(int which) {
            TwoWindows.Window window = open[which];
            boolean keeps = open[1 - which] == null || window.workbook().keeps();
            window.close();
            open[which] = null;
            if (keeps) {
                hasSaved(window);
            }
        }

        private void hasSaved(TwoWindows.Window window) {
            saved.addAll(ownTextsShownBy(window));
            gone.addAll(typedOver.get(window));
        }

        private void type(int which, TwoWindows.Window window) {
            int lesson = random.nextInt(TwoWindows.LESSONS);
            int index = random.nextInt(TwoWindows.SNIPPETS);
            String text = "int typed = " + (1000 + number++) + ";";
            story.add("type in " + which + ", lesson " + lesson + "." + index + ": " + text);
            typedOver.get(window).add(window.text(lesson, index));
            window.type(lesson, index, text);
            typed.get(window).add(text);
        }

        private Set<String> ownTextsShownBy(TwoWindows.Window window) {
            Set<String> shown = new TreeSet<>();
            for (int lesson = 0; lesson < TwoWindows.LESSONS; lesson++) {
                for (int index = 0; index < TwoWindows.SNIPPETS; index++) {
                    shown.add(window.text(lesson, index));
                }
            }
            shown.retainAll(typed.get(window));
            return shown;
        }

        private void look() throws IOException {
            Map<String, String> files =
                    windows.data().toFile().exists() ? windows.files() : Map.of();
            String all = String.join("\n", files.values());
            for (String text : saved) {
                assertTrue(
                        gone.contains(text) || all.contains(text),
                        () ->
                                "seed %d: \"%s\" is lost after\n%s\nFiles: %s"
                                        .formatted(seed, text, String.join("\n", story), files));
            }
        }
    }
}
