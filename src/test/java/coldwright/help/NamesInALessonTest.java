package coldwright.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.BenchClassPath;
import coldwright.bench.compile.StepCompiler;
import coldwright.bench.complete.NameCompleter;
import coldwright.lesson.Prelude;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a learner sees who looks for names in the first lesson. */
class NamesInALessonTest {
    private static final HelpIndex INDEX =
            HelpIndex.read(
                    """
                    icePercentAt\tFreezingCurve\tmethod\ticePercentAt(temperatureC in °C) → %\tdouble\tIce.\t\t%\t
                    SUCROSE\tShelf\tingredient\tSUCROSE\tIngredient\tSucrose.\t\t\tbare
                    aliases\tIngredient\tcomponent\taliases() → List<String>\tList<String>\tOther names.\t\t\t
                    """);

    private static NameCompleter nameCompleter;
    private static List<String> snippets;

    @BeforeAll
    static void prepare() throws IOException {
        nameCompleter =
                new NameCompleter(
                        () -> new StepCompiler(BenchClassPath.ofThisProgram(), Prelude.imports()));
        Matcher blocks =
                Pattern.compile("```java\n(.*?)```", Pattern.DOTALL)
                        .matcher(
                                Files.readString(
                                        Path.of(
                                                "src/test/resources/lessons/sugar-salt-and-rum.md")));
        snippets = blocks.results().map(block -> block.group(1)).toList();
    }

    @AfterAll
    static void close() {
        nameCompleter.close();
    }

    private static List<Suggestion> at(List<String> above, String text, int caret) {
        return Suggestions.of(nameCompleter.complete(above, text, caret, () -> false), INDEX);
    }

    @Test
    void aCurvesMembersStandAfterItsPoint() {
        String text = snippets.get(0) + "curve.";
        Suggestion first = at(List.of(), text, text.length()).get(0);
        assertEquals("icePercentAt(temperatureC in °C) → %", first.label());
        assertEquals("icePercentAt(", first.insert());
        assertEquals(text.length(), first.from());
    }

    @Test
    void everyMemberInEverySnippetIsAmongItsNames() {
        Pattern called = Pattern.compile("(\\.|::)([a-z]\\w*)(?=\\(|[,)])");
        int looked = 0;
        for (int step = 0; step < snippets.size(); step++) {
            String text = snippets.get(step);
            Matcher member = called.matcher(text);
            while (member.find()) {
                looked++;
                int caret = member.start(2) + 1;
                List<Suggestion> found = at(snippets.subList(0, step), text, caret);
                assertTrue(
                        found.stream().anyMatch(one -> one.insert().startsWith(member.group(2))),
                        "no %s in step %d: %s".formatted(member.group(2), step + 1, found));
            }
        }
        assertTrue(looked > 50, "only %d members were looked at".formatted(looked));
    }

    @Test
    void anIngredientIsFoundByItsFirstLetters() {
        String text = "var mix = Mix.of(grams(100, SUC";
        assertEquals(
                List.of("SUCROSE"),
                at(List.of(), text, text.length()).stream().map(Suggestion::label).toList());
    }
}
