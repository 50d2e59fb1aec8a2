package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.terminal.console.ExitCode;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The page of kitchen trials: a trial for each lesson, with what the lesson itself weighs out. */
class KitchenTrialsTest {
    private static final Path PAGE = Path.of("docs/kitchen-trials.md");
    private static final int TRIALS = 14;
    private static final Pattern GRAMS = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s+g\\b");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)\\)");

    private static List<String> trials() throws IOException {
        String page = Files.readString(PAGE).replace("\r\n", "\n");
        return Stream.of(page.split("(?m)^## "))
                .filter(part -> part.matches("(?s)\\d+\\. .*"))
                .toList();
    }

    @Test
    void thereIsOneForEachLessonInTheirOrder() throws IOException {
        List<String> trials = trials();
        assertEquals(
                IntStream.rangeClosed(1, TRIALS).mapToObj(n -> n + ".").toList(),
                trials.stream().map(trial -> trial.split(" ")[0]).toList());
        for (int n = 1; n <= TRIALS; n++) {
            assertTrue(trials.get(n - 1).contains("](../lessons/%02d-".formatted(n)), "trial " + n);
        }
    }

    @Test
    void whatItPointsToIsThere() throws IOException {
        Matcher link = LINK.matcher(Files.readString(PAGE));
        int count = 0;
        while (link.find()) {
            count++;
            assertTrue(Files.exists(PAGE.resolveSibling(link.group(1))), link.group(1));
        }
        assertTrue(count > TRIALS, "links");
    }

    @Test
    void eachHasAmountsCautionStepsAndWhatIsForetold() throws IOException {
        for (String trial : trials()) {
            for (String part :
                    List.of("**Amounts:**", "> **Caution.**", "\n1. ", "**Look at:**", "<!-- =")) {
                assertTrue(trial.contains(part), trial.lines().findFirst().get() + ": " + part);
            }
        }
    }

    @Test
    void whatItWeighsOutTheLessonWeighsOutToo() throws IOException {
        int amounts = 0;
        for (String trial : trials()) {
            Matcher link = LINK.matcher(trial);
            assertTrue(link.find());
            String lesson = Files.readString(PAGE.resolveSibling(link.group(1)));
            int start = trial.indexOf("**Amounts:**");
            Matcher grams = GRAMS.matcher(trial.substring(start, trial.indexOf("\n\n", start)));
            while (grams.find()) {
                amounts++;
                assertTrue(
                        Pattern.compile(
                                        "(?<![\\d.])"
                                                + Pattern.quote(grams.group(1))
                                                + "(?![\\d.]\\d)\\b")
                                .matcher(lesson)
                                .find(),
                        trial.lines().findFirst().get() + ": " + grams.group());
            }
        }
        assertTrue(amounts > 3 * TRIALS, "amounts");
    }

    @Test
    void everyNumberThatTheCalculatorSaysIsHeld() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.DONE, typedSession.obey("check", PAGE.toString()), typedSession.out());
        assertTrue(typedSession.out().contains("all passed"), typedSession.out());
    }
}
