package coldwright.workbook.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.lesson.LessonFolder;

import org.junit.jupiter.api.Test;

import java.nio.file.Path;
import java.util.Locale;

/** Every lesson has a key of its own that every file system takes. */
class LessonKeyTest {
    @Cases(1000)
    void anyNameHasAKeyOfItsOwn(Draw draw) {
        String name = name(draw);
        String key = LessonKey.ofCourse(name).name();
        assertTrue(key.matches("[a-z0-9_-]{1,80}"), key);
        assertFalse(key.matches("con|prn|aux|nul|com[0-9]|lpt[0-9]"), key);
        String other = draw.from(LessonKeyTest::name, d -> name.toUpperCase(Locale.ROOT));
        assertEquals(name.equals(other), key.equals(LessonKey.ofCourse(other).name()), key);
    }

    private static String name(Draw draw) {
        return draw.from(
                d -> d.text(100).replace('\r', ' '),
                d -> d.oneOf("con", "NUL", "com1", "lock", "oats", "Oats", "oats ", "..", "a/b"));
    }

    @Test
    void filesOfOneNameInTwoFoldersHaveTwoKeys() {
        LessonKey mine = LessonKey.ofFile(Path.of("mine/Öats & rum.md"));
        assertNotEquals(mine, LessonKey.ofFile(Path.of("yours/Öats & rum.md")));
        assertEquals(mine, LessonKey.ofFile(Path.of("mine/./Öats & rum.md")));
        assertEquals("01-oats", LessonKey.ofCourse("01-oats").name());
        assertNotEquals(LessonKey.ofCourse("Oats"), LessonKey.ofCourse("oats"));
        assertNotEquals("con", LessonKey.ofCourse("con").name());
        assertThrows(IllegalArgumentException.class, () -> new LessonKey("../oats"));
    }

    /** The value for "abc" is from FIPS 180-2, appendix B.1, from memory. */
    @Test
    void theHashIsSha256WhateverTheLineEnds() {
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                ContentHash.of("abc").hex());
        assertEquals(ContentHash.of("a\nb"), ContentHash.of("a\r\nb"));
        assertNotEquals(ContentHash.of("a\nb"), ContentHash.of("a\n\nb"));
    }

    @Test
    void theHashOfALessonIsThatOfItsFile() throws java.io.IOException {
        Path folder = Path.of("src/test/resources/lessons-to-run");
        String name = "01-warm-oats";
        String text = java.nio.file.Files.readString(folder.resolve(name + ".md"));
        assertEquals(
                ContentHash.of(text), ContentHash.of(LessonFolder.in(folder).read(name).text()));
    }
}
