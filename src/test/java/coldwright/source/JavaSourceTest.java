package coldwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;
import java.util.Set;

/** What is read from the tokens of a piece of Java. */
class JavaSourceTest {
    @Test
    void seesCallsInCodeOnly() {
        assertTrue(JavaSource.of("Page.show (figure)").calls("show"));
        assertTrue(JavaSource.of("show(figure)").calls("show"));
        assertFalse(JavaSource.of("// show(figure)\n\"show(\" + show").calls("show"));
        assertFalse(JavaSource.of("showAll(figure)").calls("show"));
    }

    @Test
    void seesNamesOfVariables() {
        assertTrue(JavaSource.of("sugar + 1").namesValue("sugar"));
        assertFalse(JavaSource.of("mix.sugar + sugar(1) /* sugar */").namesValue("sugar"));
        assertTrue(JavaSource.of("1 + sugar").namesSomething());
        assertFalse(JavaSource.of("true + 0x1e + \"sugar\"").namesSomething());
    }

    @Test
    void findsWhatIsOutsideOfQuotes() {
        assertEquals(List.of(7), JavaSource.of("\" is \"+ is 'q' ").unquoted(" is "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "f(a[1])", "f(\")\")", "/* ( */", "{(')')}"})
    void balances(String java) {
        assertTrue(JavaSource.of(java).isBalanced());
    }

    @ParameterizedTest
    @ValueSource(strings = {"(", ")", "(]", "f(\")\"", "(a))"})
    void doesNotBalance(String java) {
        assertFalse(JavaSource.of(java).isBalanced());
    }

    @Test
    void findsTheCommentThatIsNeverClosed() {
        assertEquals(3, JavaSource.of("a; /* b").unclosedComment().orElseThrow().start());
        assertEquals(3, JavaSource.of("a; /*/").unclosedComment().orElseThrow().start());
        assertTrue(JavaSource.of("a; /* b */").unclosedComment().isEmpty());
        assertTrue(JavaSource.of("\"/*\" // /*").unclosedComment().isEmpty());
    }

    @Test
    void readsTheNamesOfASnippet() {
        JavaNames names =
                JavaNames.of("double a = 1, b = 2;\nmix.add(c); d >>= 1; List<List<Mix>> e = f();");
        assertEquals(Set.of("a", "b", "e"), names.declared());
        assertEquals(Set.of("a", "b", "d", "e"), names.assigned());
        assertTrue(names.mentioned().containsAll(Set.of("mix", "c", "f")));
        assertFalse(names.mentioned().contains("add"));
        assertEquals(Set.of(), JavaNames.of("x -> y").declared());
    }
}
