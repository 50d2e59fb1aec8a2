package coldwright.bench.compile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
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
                Arguments.of(
                        "joined",
                        "class C { static final String s0 = \"abcdefghij\";"
                                + many(26, "static final String s@ = s# + s#;")
                                + "}"),
                Arguments.of(
                        "joined",
                        "interface C { String s0 = \"ab\", s1 = s0 + s0"
                                + IntStream.range(1, 26)
                                        .mapToObj(i -> ", s%d = s%d + s%d".formatted(i + 1, i, i))
                                        .collect(Collectors.joining())
                                + "; }"),
                Arguments.of(
                        "joined",
                        "class C { static final String s0 = \"abcdefghij\";"
                                + many(26, "static final String s@ = s# \\u002b s#;")
                                + "}"),
                Arguments.of(
                        "joined",
                        "void f() { final String s0 = \"%s\";".formatted("x".repeat(60_000))
                                + many(14, "final String s@ = s# + s#;")
                                + "}"),
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
                assertThrows(
                        CompilationFailedException.class,
                        () -> SnippetLimits.check(List.of(), text));
        String first = ErrorText.of("limit." + limit).split("%s")[0];
        assertEquals(first, refused.complaints().get(0).words().substring(0, first.length()));
    }

    @Test
    void constantsCountAcrossSnippets() throws CompilationFailedException {
        List<String> above =
                IntStream.range(0, 11)
                        .mapToObj(
                                i ->
                                        "class C%d { static final String s = %s; }"
                                                .formatted(
                                                        i,
                                                        i == 0
                                                                ? "\"" + "x".repeat(50) + "\""
                                                                : "C%d.s + C%d.s"
                                                                        .formatted(i - 1, i - 1)))
                        .toList();
        assertThrows(
                CompilationFailedException.class, () -> SnippetLimits.check(above, above.get(10)));
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
