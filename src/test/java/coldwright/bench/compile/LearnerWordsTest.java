package coldwright.bench.compile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.words.Words;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The errors that learners make most, each with its sentence and its place. */
final class LearnerWordsTest {
    private static StepCompiler compiler;

    @Test
    void speaksTheLanguageShown() {
        Words.show(Locale.GERMAN);
        try {
            saysWhatIsWrongAndWhere(
                    "double a = «suger» * 2;",
                    "Das Symbol `suger` ist unbekannt. Ist `sugar` gemeint?");
        } finally {
            Words.show(Locale.ENGLISH);
        }
    }

    @BeforeAll
    static void prepare() throws CompilationFailedException {
        compiler =
                new StepCompiler(
                        List.of(),
                        List.of("import java.util.*;", "import static java.lang.Math.*;"));
        compiler.compile(
                """
                double sugar = 120;
                int scoops = 3;
                String name = "malt";
                double[] grams = {1, 2};
                double freezing(double percent) { return -0.06 * percent; }
                enum Part { MILK }
                Part SUCROSE = Part.MILK;
                double grams(double massG, Part part) { return massG; }
                double line(String name, java.util.function.DoubleUnaryOperator of) { return 0; }
                double pour(Part... parts) { return 0; }
                """,
                () -> false);
    }

    @AfterAll
    static void close() {
        compiler.close();
    }

    /** Snippet with the faulty place between « and », and the sentence. */
    static Stream<Arguments> errors() {
        return Stream.of(
                error(
                        "double a = «suger» * 2;",
                        "Cannot find symbol `suger`. Did you mean `sugar`?"),
                error(
                        "double a = «Sugar» * 2;",
                        "Cannot find symbol `Sugar`. Did you mean `sugar`?"),
                error(
                        "double a = «sqroot»(2);",
                        "Cannot find symbol `sqroot()`. Did you mean `sqrt()`?"),
                error(
                        "double a = «quarkblatt»;",
                        "Cannot find symbol `quarkblatt`. Is it spelled right and declared above?"),
                error(
                        "double a = «Math.sqroot»(2);",
                        "`Math` has no `sqroot()`. Did you mean `sqrt()`?"),
                error("int n = «grams.lenght»;", "`grams` has no `lenght`. Did you mean `length`?"),
                error("«Strin» s = null;", "Cannot find symbol `Strin`. Did you mean `String`?"),
                error(
                        "«system.out».println(1);",
                        "Cannot find symbol `system`. Did you mean `System`?"),
                error("double a = 5«\n»double b = 6;", "A semicolon is missing after `5`."),
                error(
                        "sugar = «\"much\"»;",
                        "The variable `sugar` takes a number (double), not a string."),
                error(
                        "int n = «2.5»;",
                        "The variable `n` takes a whole number (int), not a number with decimals (double)."),
                error(
                        "freezing(«\"a\"»);",
                        "The method `freezing` needs a number (double) here, not a string."),
                error(
                        "«freezing»(1, 2);",
                        "The method `freezing` takes 1 argument (double), not 2 arguments (int, int)."),
                error(
                        "double a = «1,5»;",
                        "A decimal number is written with a point: `1.5`, not `1,5`."),
                error(
                        "double a = «3g»;",
                        "`3g` isn’t a number. Leave out the unit, or put it into the name."),
                error(
                        "String s = «\"»abc;",
                        "This string has no end. Close it with `\"` on the same line."),
                error(
                        "String s = «'»abc';",
                        "Single quotes take one character. Put a string between double quotes: `\"…\"`."),
                error(
                        "for (int i = 0; i < 3; i++) {\n  sugar = 1;«»",
                        "A `}` is missing: the `{` in line 1 is never closed."),
                error(
                        "double a = max(1, 2«»",
                        "A `)` is missing: the `(` in line 1 is never closed."),
                error("double a = 5 + «;»", "Something is missing before `;`."),
                error(
                        "if («sugar = 3») { }",
                        "A single `=` assigns a value. To compare, write `==`."),
                error(
                        "double f(double x) { double y = x; «}»",
                        "This method must return a value. Add a `return` at its end."),
                error("double a = sugar «×» 2;", "`×` is not a Java symbol. Multiply with `*`."),
                error(
                        "double a = sugar «−» 2;",
                        "`−` is not a Java symbol. Type the minus sign of the keyboard, `-`."),
                error(
                        "int n = «99999999999»;",
                        "99999999999 is too large for a whole number (`int`). Write it with a decimal point: `99999999999.0`."),
                error(
                        "double a = «name * 2»;",
                        "The operator `*` can’t be used between a string and a whole number (int)."),
                error("«sugar.size»();", "`sugar` is a number and has no methods or fields."),
                error(
                        "List<«int»> numbers;",
                        "Between `<` and `>` write a class: `Double` for `double`, `Integer` for `int`."),
                error(
                        "var «nothing»;",
                        "`var` needs a value to know the type. Write `var name = …;`."),
                error("import «foo.Bar»;", "Nothing called `foo.Bar` can be imported."),
                error("double «3x» = 2;", "`3x` can’t be a name. A name begins with a letter."),
                error(
                        "double a = «nope»(sugar) + 1;\nSystem.out.println(a);",
                        "Cannot find symbol `nope()`. Is it spelled right and declared above?"),
                error(
                        "double f(double x) { return x * «fakter»; }",
                        "Cannot find symbol `fakter`. Is it spelled right and declared above?"),
                error(
                        "double a = 2;\nvar b = «$1» + a;",
                        "Cannot find symbol `$1`. Give a value a name to use it again: `var cold = …;`."),
                error("if« »sugar > 3 { }", "`(` is missing after `if`."),
                error(
                        "double a = grams(100, «sucrose»);",
                        "Cannot find symbol `sucrose`. Did you mean `SUCROSE`?"),
                error("double a = max(1, 2«;»", "A `)` is missing before `;`."),
                error(
                        "double a = «Max»(1, 2);",
                        "Cannot find symbol `Max()`. Did you mean `max()`?"),
                error(
                        "double a = grams(«1,5», SUCROSE);",
                        "A decimal number is written with a point: `1.5`, not `1,5`."),
                error(
                        "double a = «\"12\"»;",
                        "The variable `a` takes a number (double), not a string."),
                error(
                        "System.out.println(malt«\"»);",
                        "This string has no end. Close it with `\"` on the same line."),
                error("«Numbr» n = 3;", "Cannot find symbol `Numbr`. Did you mean `Number`?"),
                error(
                        "double f() { double y; return «y»; }",
                        "The variable `y` has no value yet. Give it one where it is declared."),
                error(
                        "«freezing»();",
                        "The method `freezing` takes 1 argument (double), but the parentheses are empty."),
                error(
                        "double a = grams(«SUCROSE», 100);",
                        "The method `grams` takes these two the other way round: `grams(100, SUCROSE)`."),
                error("«PI» = 3;", "`PI` is final and can’t be changed. Use another name."),
                error(
                        "double a = 1; «/*» a remark\ndouble b = 2;",
                        "This comment has no end. Close it with `*/`."),
                error("else «{ sugar = 2; }»", "This `else` has no `if` before it."),
                error("«name.lenght»();", "`name` has no `lenght()`. Did you mean `length()`?"),
                error(
                        "double f() { double y = 1; «double y = 2»; return y; }",
                        "`y` is already declared. Leave out the type to change it, or use another name."),
                error(
                        "double a = grams(«100g», SUCROSE);",
                        "`100g` isn’t a number. Leave out the unit, or put it into the name."),
                error(
                        "double a = «20%»;",
                        "`20%` isn’t a number. Leave out the unit, or put it into the name."),
                error(
                        "«Now mix the sugar with the milk.»",
                        "This reads like a sentence, not like Java. Begin a comment with `//`."),
                error(
                        "sugar = 3;\n«Add 30 grams more»",
                        "This reads like a sentence, not like Java. Begin a comment with `//`."),
                error(
                        "int n = «name.length»;",
                        "The method `length` is called with parentheses: `name.length()`."),
                error(
                        "line(\"a\", «name.charAt»);",
                        "The method `charAt` is called with parentheses, `name.charAt(…)`. To pass the method itself, write `name::charAt`."),
                error(
                        "line(\"a\", «freezing(3)»);",
                        "The method `line` needs a function such as `x -> 2 * x` here, not a number (double)."),
                error(
                        "«pour»(100, SUCROSE);",
                        "The method `pour` takes any number of Part, not 2 arguments (int, Part)."),
                error("double a = sugar «x» 2;", "Multiply with `*`, not with `x`."),
                error(
                        "double a = «2(»sugar);",
                        "An operator is missing before `(`. Multiply with `*`."),
                error(
                        "double «sugar amount» = 3;",
                        "`sugar amount` can’t be a name because it has a space. Write `sugarAmount`."),
                error("boolean b = sugar > 3 «and» scoops < 2;", "`and` is written `&&`."),
                error(
                        "boolean b = «1 < sugar < 3»;",
                        "Join two comparisons with `&&`: `a < b && b < c`."),
                error("«While» (sugar > 3) { }", "`While` is written in lower case: `while`."),
                error(
                        "for «(int i = 0, i < 3, i++)» { }",
                        "The three parts of a `for` are separated by semicolons: `for (int i = 0; i < 3; i++)`."),
                error(
                        "double[] a = «[1, 2, 3]»;",
                        "A list is written `List.of(1, 2, 3)` and an array `{1, 2, 3}`, without square brackets."),
                error(
                        "if (sugar > 3) «then» { }",
                        "Java has no `then`. The statement comes right after the condition."),
                error(
                        "if (sugar > 3) «double a = 2;»",
                        "A variable can’t be declared here alone. Put braces around it: `{ … }`."),
                error(
                        "«println»(sugar);",
                        "Cannot find symbol `println()`. Did you mean `System.out.println()`?"),
                error(
                        "double a = «Random»(3);",
                        "`Random` is a type, not a method. Write `new Random(…)` or call one of its methods: `Random.…`."),
                error(
                        "double c = «b»;",
                        "Cannot find symbol `b`. Is it spelled right and declared above?"));
    }

    private static Arguments error(String marked, String words) {
        return Arguments.of(marked, words);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("errors")
    void saysWhatIsWrongAndWhere(String marked, String words) {
        String snippet = marked.replace("«", "").replace("»", "");
        CompilationFailedException refused =
                assertThrows(
                        CompilationFailedException.class,
                        () -> compiler.compile(snippet, () -> false));
        CompileProblem compileProblem = refused.complaints().get(0);
        assertEquals(words, compileProblem.words());
        assertEquals(marked.indexOf('«'), compileProblem.start(), "where it begins");
    }
}
