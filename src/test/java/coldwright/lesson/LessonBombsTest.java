package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.lang.management.ManagementFactory;

/**
 * Texts that are made to keep a reader busy. Work is counted in bytes that the reader's thread
 * allocates, which a busy machine doesn't change.
 */
class LessonBombsTest {
    private static final int CHARACTERS = 40_000;

    /** Twice the text is twice the work, and some more for growing lists. */
    private static final double MOST_GROWTH = 2.6;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private static long work(String bomb, int characters) {
        String text = "# t\n## s\nx " + bomb.repeat(characters / bomb.length()) + "\n";
        long before = THREADS.getCurrentThreadAllocatedBytes();
        LessonReader.read("bomb.md", text);
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "*a ",
                "**a*",
                "*a _b ",
                "[",
                "[a](",
                "![",
                "<!-- ",
                "1<!-- = a --> ",
                "<a ",
                "\n<!-- a -->\n",
                "\n## s\n",
                "\n```java\nint a=1;\n```\n```java solution\nint a=2;\n```\n",
                "\n```forecast\nq\n- * a\n- b\n```\n",
                "\n```check\na is 1 within 1\n```\n",
                "\n> ",
                "\n- - "
            })
    void workGrowsNoFasterThanTheText(String bomb) {
        work(bomb, CHARACTERS);
        double growth = work(bomb, 2 * CHARACTERS) / (double) work(bomb, CHARACTERS);
        assertTrue(growth < MOST_GROWTH, "twice the text is " + growth + " times the work");
    }

    @Test
    void tooManyStepsAreCutWithOneError() {
        StringBuilder text = new StringBuilder("# t\n");
        for (int i = 0; i < 80_000; i++) {
            text.append("## s").append(i).append('\n');
        }
        Lesson lesson = LessonReader.read("steps.md", text.toString());
        assertEquals(500, lesson.steps().size());
        assertEquals(
                "steps.md:502: the lesson has more than 500 steps; make several lessons of it",
                lesson.faults().get(0).toString());
    }
}
