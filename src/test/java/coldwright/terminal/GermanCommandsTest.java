package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.EnglishWords;
import coldwright.words.Words;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a command without a lesson shows is German in a German run. */
class GermanCommandsTest {
    private static final String JOBS = "src/test/resources/jobs/";

    @BeforeEach
    void german() {
        Words.show(Locale.GERMAN);
    }

    @AfterEach
    void backToEnglish() {
        Words.show(Locale.ENGLISH);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "help",
                "help walk",
                "help check",
                "help handout",
                "help kit",
                "help new",
                "help batch",
                "help balance",
                "kit 1 9 --learners 12",
                "batch " + JOBS + "after-heat-shock.batch --why",
                "batch " + JOBS + "class-of-thirty.batch --why",
                "batch " + JOBS + "lean-sorbet-in-a-bag.batch --why",
                "batch " + JOBS + "liqueur-that-will-not-set.batch --why",
                "batch " + JOBS + "rich-custard-in-a-tub.batch --why",
                "balance src/test/resources/wrong-recipes/nothing.batch",
                "balance README.md",
                "batch README.md",
                "batch pom.xml",
                "batch src",
                "wlak 1",
                "walk",
                "walk 99",
                "check --seconds 0",
                "check README.md nowhere",
                "handout 1 -o out.txt",
                "handout 1 --paper A9 -o out.pdf",
                "new README.md",
                "new lesson.txt"
            })
    void saysIt(String words) {
        TypedSession typed = TypedSession.nobody();
        typed.obey(words.split(" "));
        String text = typed.out() + typed.err();
        assertFalse(text.isBlank());
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\\R")) {
            if (!line.matches(".*, \\d+ g|.*\\bLantern Lane\\b.*")) { // a recipe's own name
                lines.add(line);
            }
        }
        assertEquals(List.of(), EnglishWords.in(lines), text);
        assertTrue(
                Stream.of(text.split("\\R"))
                        .filter(line -> !line.contains(".md") && !line.contains("CFR"))
                        .noneMatch(
                                line -> line.matches(".*\\d\\.\\d+ ?(?:g|%|°C|min|h|L|µm)\\b.*")),
                text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "air: 300 % | 2: Overrun ist 300; erlaubt ist 0 bis 200 %",
                "freezer: 5 °C | 2: Gefrierfach ist 5; erlaubt ist −60 bis 0 °C",
                "stored: 7 days, warmed to 5 °C for 2 h | 2: Erwärmung ist 5; erlaubt ist −40 bis −0,5 °C",
                "total: viel | 2: Summe ist „viel“ und keine Zahl; eine Zahl schreiben"
            })
    void aFieldsErrorNamesItInGerman(String line, String error, @TempDir Path at)
            throws IOException {
        Path file = at.resolve("x.batch");
        Files.writeString(file, "name: x\n" + line + "\n\ningredient,grams\nwater,500\n");
        TypedSession typed = TypedSession.nobody();
        typed.obey("batch", file.toString());
        assertEquals(file + ":" + error + "\n", typed.err());
    }
}
