package coldwright.bench.compile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Texts made to overload the compiler end in a sentence before it sees them. */
final class SnippetLimitsTest {
    private static String many(int count, String part) {
        return IntStream.range(0, count)
                .mapToObj(i -> part.replace("#", "" + i).replace("@", "" + (i + 1)))
                .collect(Collectors.joining());
    }

    static Stream<Arguments> bombs() {
        return Stream.of(
                Arguments.of("long", "int a = 1;" + " ".repeat(100_000)),
                Arguments.of("operators", "int a = " + "1 + ".repeat(9_000) + "1;"),
                Arguments.of("operators", "int a = " + "- ".repeat(4_000) + "1;"),
                Arguments.of("operators", "boolean a = " + "!".repeat(4_000) + "true;"),
                Arguments.of("operators", "int a = " + "(int) ".repeat(1_500) + "1;"),
                Arguments.of("operators", "int a = " + "true ? 1 : ".repeat(600) + "2;"),
                Arguments.of("operators", "Object a = " + "x -> ".repeat(1_200) + "1;"),
                Arguments.of("operators", "var a = \"a\"" + ".strip()".repeat(1_000) + ";"),
                Arguments.of("operators", "if (true) ".repeat(600) + "{ }"),
                Arguments.of("operators", "do ".repeat(2_000) + ";"),
                Arguments.of("operators", "for (;;) ".repeat(600) + ";"),
                Arguments.of("operators", many(1_200, "a#: ") + ";"),
                Arguments.of("deep", "int a = " + "(".repeat(9_000) + "1" + ")".repeat(9_000)),
                Arguments.of("deep", "{".repeat(300) + "}".repeat(300)),
                Arguments.of("deep", many(300, "class A# {") + "}".repeat(300)),
                Arguments.of("statements", many(2_000, "int a# = 1;")),
                Arguments.of("tokens", "class A {" + many(2_000, "void f(T# a) { }") + "}"),
                Arguments.of(
                        "tokens",
                        "int f(int a) { switch (a) {"
                                + many(3_000, "case #: a++; ")
                                + "} return a; }"),
                Arguments.of("tokens", "int[] a = {" + many(6_000, "#, ") + "};"));
    }

    @ParameterizedTest(name = "{0} {index}")
    @MethodSource("bombs")
    void endsInASentenceAtOnce(String limit, String text) {
        CompilationFailedException refused =
                assertThrows(CompilationFailedException.class, () -> SnippetLimits.check(text));
        String first = ErrorText.of("limit." + limit).split("%s")[0];
        assertEquals(first, refused.complaints().get(0).words().substring(0, first.length()));
    }

    /** Within the limits the compiler itself ends: the largest texts of each kind. */
    @ParameterizedTest
    @MethodSource("largest")
    void theLargestTextsCompileOrAreRefusedByJava(String text) throws Exception {
        Throwable[] thrown = new Throwable[1];
        Runnable compile =
                () -> {
                    try (StepCompiler compiler = new StepCompiler(List.of(), List.of())) {
                        compiler.compile(text, () -> false);
                    } catch (CompilationFailedException e) {
                        // Java's own limits
                    } catch (Throwable e) {
                        thrown[0] = e;
                    }
                };
        Thread thread = new Thread(null, compile, "compile", 16 << 20);
        thread.start();
        thread.join();
        assertNull(thrown[0]);
    }

    static Stream<String> largest() {
        return Stream.of(
                "int a = " + "1 + ".repeat(990) + "1;",
                "boolean a = " + "!".repeat(990) + "true;",
                "int a = " + "(".repeat(190) + "1" + ")".repeat(190) + ";",
                "var a = \"a\"" + ".strip()".repeat(480) + ";",
                "if (true) ".repeat(320) + "{ }",
                "class A {" + many(1_100, "void f(A a, int b#) { }") + "}",
                "class A {" + many(1_200, "int f# = 1;") + "}",
                "int f(int a) { switch (a) {" + many(1_400, "case #: a++; ") + "} return a; }",
                "class C { static final String s0 = \"abcdefghij\";"
                        + many(12, "static final String s@ = s# + s#;")
                        + "}");
    }
}
