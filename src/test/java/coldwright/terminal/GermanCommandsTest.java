package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.EnglishWords;
import coldwright.words.Words;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
}
