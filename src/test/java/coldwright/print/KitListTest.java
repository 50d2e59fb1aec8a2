package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.KitItem;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonReader;
import coldwright.words.Words;

import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The shopping and equipment list, against amounts worked out by hand. */
class KitListTest {
    private static Lesson lesson(String title, String... kit) {
        String text =
                "# "
                        + title
                        + "\n\n## Step\n\nText.\n\n<!--\nkit: "
                        + String.join("\nkit: ", kit)
                        + "\n-->\n";
        Lesson lesson = LessonReader.read("k.md", text.getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of(), lesson.faults());
        return lesson;
    }

    private static final Lesson SALT =
            lesson(
                    "Salt <1>",
                    "15 min work for class",
                    "150 g salt for 4",
                    "1 scales for 4",
                    "1 freezer for class");
    private static final Lesson CREAM =
            lesson(
                    "Cream",
                    "30 min work for class",
                    "about 100 g salt for 4",
                    "65 g cream 35 % for 4",
                    "85 g cream 35 % for 4",
                    "2 scales for 8",
                    "3 spoons for 1");

    @Test
    void boughtThingsAddUpOverLessonsAndGroups() {
        // 25 learners are 7 groups of 4: 7 × 150 + 7 × 100 g of salt, 7 × (65 + 85) g of cream.
        assertEquals(
                List.of("about 1.75 kg salt", "1.05 kg cream 35 %"),
                new KitList(List.of(SALT, CREAM), 25).sections().get("To buy"));
    }

    @Test
    void equipmentIsSharedAndUsedAgain() {
        // 7 scales in the first lesson, 2 for each of 4 groups of 8 in the second: 8.
        assertEquals(
                List.of("8 × scales (shared by 4)", "1 × freezer (for all)", "75 × spoons"),
                new KitList(List.of(SALT, CREAM), 25).sections().get("To have ready"));
    }

    @Test
    void allergensComeFromTheShelf() {
        assertEquals(
                List.of("milk: cream 35 %"),
                new KitList(List.of(SALT, CREAM), 1)
                        .sections()
                        .get("Allergens in it (labels may name more)"));
    }

    @Test
    void theWorkingTimeIsListed() {
        assertEquals(
                List.of("Salt <1>: 15 min of work, waiting not counted"),
                new KitList(List.of(SALT), 1).sections().get("Trials"));
    }

    @Test
    void thePageIsWholeAndEscaped() {
        String html = new KitList(List.of(SALT), 4).html(PaperSize.A4);
        assertTrue(html.contains("<h1>Kit for 4 learners</h1>"), html);
        assertTrue(html.contains("<li>Salt &lt;1&gt;: 15 min"), html);
        assertTrue(html.endsWith("</html>\n"), html);
    }

    @Test
    void theNumberOfLearnersHasARange() {
        assertThrows(IllegalArgumentException.class, () -> new KitList(List.of(), 0));
        assertThrows(IllegalArgumentException.class, () -> new KitList(List.of(), 1000));
    }

    /** A lesson's text is English, but a German list names what to buy in German. */
    @Test
    void eachThingOfTheCourseHasItsGermanName() {
        LessonFolder folder = LessonFolder.in(Path.of("lessons"));
        List<Lesson> course = folder.names().stream().map(folder::read).toList();
        Words.show(Locale.GERMAN);
        try {
            List<String> german = new KitList(course, 4).plain();
            assertTrue(german.contains("  1 × Edelstahlschüssel (für je 4)"), german::toString);
            for (KitItem item : course.stream().flatMap(one -> one.kit().stream()).toList()) {
                String key = "kit.thing." + item.name().replaceAll("[^a-z0-9]+", "-");
                assertTrue(
                        item.unit().equals("min") || Words.of("print").has(key),
                        "no German name for " + item.name());
            }
        } finally {
            Words.show(Locale.ENGLISH);
        }
    }
}
