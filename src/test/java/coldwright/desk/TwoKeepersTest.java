package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Two windows on one data folder: nothing that one wrote is lost because of the other. */
class TwoKeepersTest {
    @TempDir Path folder;

    private static List<String> copies(TwoWindows windows) throws IOException {
        return windows.files().keySet().stream()
                .filter(name -> name.startsWith("other-window/"))
                .toList();
    }

    @Test
    void whatTheSecondWindowDidNotTouchShowsWhatTheFirstOneWrote() throws IOException {
        TwoWindows windows = new TwoWindows(folder);
        TwoWindows.Window first = windows.open();
        TwoWindows.Window second = windows.open();
        first.type(0, 0, "int a = 11;");
        first.type(1, 1, "int b = 22;");
        second.type(1, 0, "int a = 33;");
        first.close();
        second.focus();
        second.pass();

        assertEquals("int a = 11;", second.text(0, 0), "an untouched lesson");
        assertEquals("int b = 22;", second.text(1, 1), "an untouched snippet of a touched lesson");
        assertEquals("int a = 33;", second.text(1, 0));
        assertEquals(List.of(), copies(windows), "nothing is lost, so nothing is copied");
        second.pass();
        second.close();
        TwoWindows.Window next = windows.open();
        assertEquals("int a = 11;", next.text(0, 0));
        assertEquals("int b = 22;", next.text(1, 1));
        assertEquals("int a = 33;", next.text(1, 0));
        next.close();
    }

    @Test
    void whatBothChangedIsKeptTwiceAndTheWindowSaysWhere() throws IOException {
        TwoWindows windows = new TwoWindows(folder);
        TwoWindows.Window first = windows.open();
        TwoWindows.Window second = windows.open();
        first.type(0, 0, "int a = 11;");
        second.type(0, 0, "int a = 33;");
        first.close();
        second.focus();
        second.pass();

        assertEquals("int a = 33;", second.text(0, 0));
        List<String> copies = copies(windows);
        assertEquals(1, copies.size(), copies::toString);
        assertTrue(
                copies.get(0).matches("other-window/lesson-0-[0-9a-f]+-\\d{8}-\\d{6}\\.txt"),
                copies::toString);
        assertTrue(windows.files().get(copies.get(0)).contains("int a = 11;"));
        assertEquals(
                "Another window changed “Lesson 0”. Its version is kept in "
                        + windows.data().resolve(copies.get(0))
                        + ".",
                second.desk().notice().get());
        second.pass();
        second.type(0, 0, "int a = 34;");
        second.close();
        assertEquals(1, copies(windows).size(), "what this window wrote itself is not copied");
    }

    @Test
    void aWindowThatIsTypedInTakesOverSoonAfterTheOtherHasCrashed() throws IOException {
        TwoWindows windows = new TwoWindows(folder);
        TwoWindows.Window first = windows.open();
        TwoWindows.Window second = windows.open();
        first.type(0, 0, "int a = 11;");
        first.pass();
        first.crash();
        second.type(0, 1, "int b = 44;");
        second.pass();
        second.pass();
        second.crash();

        TwoWindows.Window next = windows.open();
        assertEquals("int a = 11;", next.text(0, 0));
        assertEquals("int b = 44;", next.text(0, 1));
        next.close();
    }

    @Test
    void aWindowThatIsClosedKeepsWhatItCouldNotKeepBefore() throws IOException {
        TwoWindows windows = new TwoWindows(folder);
        TwoWindows.Window first = windows.open();
        TwoWindows.Window second = windows.open();
        second.type(0, 1, "int b = 44;");
        first.close();
        second.close();

        TwoWindows.Window next = windows.open();
        assertEquals("int b = 44;", next.text(0, 1));
        next.close();
    }

    @Test
    void whatWasMovedOutOfTheWayDoesNotComeBack() throws IOException {
        TwoWindows windows = new TwoWindows(folder);
        TwoWindows.Window first = windows.open();
        first.type(0, 0, "int a = 11;");
        first.pass();
        TwoWindows.Window second = windows.open();
        first.keeper().archive();
        first.close();
        second.focus();
        second.pass();
        second.close();

        assertEquals(
                List.of(),
                windows.files().keySet().stream()
                        .filter(name -> name.startsWith("lessons/"))
                        .toList());
    }
}
