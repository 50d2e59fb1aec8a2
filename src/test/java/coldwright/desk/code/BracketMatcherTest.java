package coldwright.desk.code;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.source.JavaSource;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Optional;

/** Brackets that belong together. */
final class BracketMatcherTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "f(a[1])   | 2 | 1 6",
                "f(a[1])   | 1 | 1 6",
                "f(a[1])   | 7 | 1 6",
                "f(a[1])   | 4 | 3 5",
                "f(a[1])   | 0 | none",
                "f(\"(\")  | 2 | 1 5",
                "f(')')    | 6 | 1 5",
                "(a // )¶) | 1 | 0 8",
                "(a]       | 1 | none",
                "((a)      | 1 | 1 3",
                "((a)      | 2 | 1 3",
                ")         | 0 | none",
            })
    void finds(String java, int caret, String pair) {
        String text = java.stripTrailing().replace('¶', '\n');
        Optional<BracketMatcher.Pair> found = BracketMatcher.at(JavaSource.of(text), caret);
        assertEquals(pair, found.map(one -> one.open() + " " + one.close()).orElse("none"), text);
    }
}
