package coldwright.bench.compile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.stream.Stream;

/** The errors that learners make most, each with its sentence and its place. */
final class LearnerWordsTest {
    private static StepCompiler compiler;

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
                        "`suger` is not known here; did you mean `sugar`?"),
                error(
                        "double a = «Sugar» * 2;",
                        "`Sugar` is not known here; did you mean `sugar`?"),
                error(
                        "double a = «sqroot»(2);",
                        "`sqroot()` is not known here; did you mean `sqrt()`?"),
                error(
                        "double a = «quarkblatt»;",
                        "`quarkblatt` is not known here; is it spelled right, and declared above?"),
                error(
                        "double a = «Math.sqroot»(2);",
                        "`Math` has no `sqroot()`; did you mean `sqrt()`?"),
                error("int n = «grams.lenght»;", "`grams` has no `lenght`; did you mean `length`?"),
                error("«Strin» s = null;", "`Strin` is not known here; did you mean `String`?"),
                error(
                        "«system.out».println(1);",
                        "`system` is not known here; did you mean `System`?"),
                error("double a = 5«\n»double b = 6;", "a semicolon is missing after `5`"),
                error("sugar = «\"much\"»;", "text can't be put into `sugar`, which holds numbers"),
                error(
                        "int n = «2.5»;",
                        "a number with decimals can't be put into `n`, which holds whole numbers"),
                error("freezing(«\"a\"»);", "`freezing` needs a number here, not text"),
                error(
                        "«freezing»(1, 2);",
                        "`freezing` takes 1 value (double), not 2 values (int, int)"),
                error(
                        "double a = «1,5»;",
                        "a decimal number is written with a point: `1.5`, not `1,5`"),
                error(
                        "double a = «3g»;",
                        "`3g` is not a number; leave the unit away, or put it into the name"),
                error(
                        "String s = «\"»abc;",
                        "this text has no end; close it with `\"` on the same line"),
                error(
                        "String s = «'»abc';",
                        "single quotes hold one character; put text between double quotes: `\"…\"`"),
                error(
                        "for (int i = 0; i < 3; i++) {\n  sugar = 1;«»",
                        "a `}` is missing: the `{` in line 1 is never closed"),
                error(
                        "double a = max(1, 2«»",
                        "a `)` is missing: the `(` in line 1 is never closed"),
                error("double a = 5 + «;»", "something is missing before `;`"),
                error(
                        "if («sugar = 3») { }",
                        "a single `=` puts a value in; to compare, write `==`"),
                error(
                        "double f(double x) { double y = x; «}»",
                        "this method promises a value but can end without `return`; add one at its end"),
                error("double a = sugar «×» 2;", "`×` is no sign of Java; multiply with `*`"),
                error(
                        "double a = sugar «−» 2;",
                        "`−` is no sign of Java; write the minus of the keyboard, `-`"),
                error(
                        "int n = «99999999999»;",
                        "99999999999 is too large for a whole number; write it with a point: `99999999999.0`"),
                error(
                        "double a = «name * 2»;",
                        "`*` does not work between text and a whole number"),
                error(
                        "«sugar.size»();",
                        "`sugar` is a plain number; nothing can stand after it with a point"),
                error(
                        "List<«int»> numbers;",
                        "between `<` and `>` stands a class: `Double` for `double`, `Integer` for `int`"),
                error(
                        "var «nothing»;",
                        "`var` needs a value to know the type from; write `var name = …;`"),
                error("import «foo.Bar»;", "there is nothing called `foo.Bar` to import"),
                error("double «3x» = 2;", "`3x` can't be a name; a name begins with a letter"),
                error(
                        "double a = «nope»(sugar) + 1;\nSystem.out.println(a);",
                        "`nope()` is not known here; is it spelled right, and declared above?"),
                error(
                        "double f(double x) { return x * «fakter»; }",
                        "`fakter` is not known here; is it spelled right, and declared above?"),
                error(
                        "double a = 2;\nvar b = «$1» + a;",
                        "`$1` is not known here; give a value a name to use it again: `var cold = …;`"),
                error("if« »sugar > 3 { }", "`(` is missing after `if`"),
                error(
                        "double a = grams(100, «sucrose»);",
                        "`sucrose` is not known here; did you mean `SUCROSE`?"),
                error("double a = max(1, 2«;»", "a `)` is missing before `;`"),
                error(
                        "double a = «Max»(1, 2);",
                        "`Max()` is not known here; did you mean `max()`?"),
                error(
                        "double a = grams(«1,5», SUCROSE);",
                        "a decimal number is written with a point: `1.5`, not `1,5`"),
                error("double a = «\"12\"»;", "text can't be put into `a`, which holds numbers"),
                error(
                        "System.out.println(malt«\"»);",
                        "this text has no end; close it with `\"` on the same line"),
                error("«Numbr» n = 3;", "`Numbr` is not known here; did you mean `Number`?"),
                error(
                        "double f() { double y; return «y»; }",
                        "`y` has no value yet; give it one where it is declared"),
                error(
                        "«freezing»();",
                        "`freezing` takes 1 value (double), but nothing stands between its brackets"),
                error(
                        "double a = grams(«SUCROSE», 100);",
                        "`grams` takes these two in the other order: `grams(100, SUCROSE)`"),
                error("«PI» = 3;", "`PI` is fixed and can't be changed; take a name of your own"),
                error(
                        "double a = 1; «/*» a remark\ndouble b = 2;",
                        "this remark has no end; close it with `*/`"),
                error("else «{ sugar = 2; }»", "this `else` has no `if` before it"),
                error("«name.lenght»();", "`name` has no `lenght()`; did you mean `length()`?"),
                error(
                        "double f() { double y = 1; «double y = 2»; return y; }",
                        "`y` is declared twice; leave the type away to change it, or take another name"),
                error(
                        "double a = grams(«100g», SUCROSE);",
                        "`100g` is not a number; leave the unit away, or put it into the name"),
                error(
                        "double a = «20%»;",
                        "`20%` is not a number; leave the unit away, or put it into the name"),
                error(
                        "«Now mix the sugar with the milk.»",
                        "this reads like a sentence, not like Java; begin a remark with `//`"),
                error(
                        "sugar = 3;\n«Add 30 grams more»",
                        "this reads like a sentence, not like Java; begin a remark with `//`"),
                error(
                        "int n = «name.length»;",
                        "`length` is called with brackets: `name.length()`"),
                error(
                        "line(\"a\", «name.charAt»);",
                        "`charAt` is called with brackets, `name.charAt(…)`; to hand it over, write `name::charAt`"),
                error(
                        "line(\"a\", «freezing(3)»);",
                        "`line` needs a function like `x -> 2 * x` here, not a number"),
                error(
                        "«pour»(100, SUCROSE);",
                        "`pour` takes as many Part as you like, but not 2 values (int, Part)"),
                error("double a = sugar «x» 2;", "multiply with `*`, not with `x`"),
                error("double a = «2(»sugar);", "a sign is missing before `(`; multiply with `*`"),
                error(
                        "double «sugar amount» = 3;",
                        "`sugar amount` can't be a name, since it has a space; write `sugarAmount`"),
                error("boolean b = sugar > 3 «and» scoops < 2;", "`and` is written `&&`"),
                error(
                        "boolean b = «1 < sugar < 3»;",
                        "two comparisons are joined with `&&`: `a < b && b < c`"),
                error("«While» (sugar > 3) { }", "`While` is written with small letters: `while`"),
                error(
                        "for «(int i = 0, i < 3, i++)» { }",
                        "the three parts of a `for` are parted by semicolons: `for (int i = 0; i < 3; i++)`"),
                error(
                        "double[] a = «[1, 2, 3]»;",
                        "a list is written `List.of(1, 2, 3)`, an array `{1, 2, 3}`; no square brackets"),
                error(
                        "if (sugar > 3) «then» { }",
                        "there is no `then` in Java; what is to be done stands right after the condition"),
                error(
                        "if (sugar > 3) «double a = 2;»",
                        "a variable can't be declared here alone; put braces around it: `{ … }`"),
                error(
                        "«println»(sugar);",
                        "`println()` is not known here; did you mean `System.out.println()`?"),
                error(
                        "double a = «Random»(3);",
                        "`Random` is a type and can't be called; look what stands after `Random.`, or write `new Random(…)`"),
                error(
                        "double c = «b»;",
                        "`b` is not known here; is it spelled right, and declared above?"));
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
