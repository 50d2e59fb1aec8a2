package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.util.List;

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
}
