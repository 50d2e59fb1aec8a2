package coldwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Who may know whom. If a rule needs an exemption, the class stands in the wrong place. */
class ArchitectureTest {
    private static final Path SOURCES = Path.of("src/main/java");
    private static final JavaClasses PROGRAM = program();

    private static JavaClasses program() {
        try {
            Path classes =
                    Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            return new ClassFileImporter().importPath(classes);
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void everySourceFileWasLookedAt() throws IOException {
        Set<String> written;
        try (Stream<Path> files = Files.walk(SOURCES)) {
            written =
                    files.map(file -> SOURCES.relativize(file).toString().replace('\\', '/'))
                            .filter(name -> name.endsWith(".java"))
                            .filter(name -> !name.endsWith("package-info.java"))
                            .map(name -> name.replace('/', '.').replaceFirst("\\.java$", ""))
                            .collect(Collectors.toCollection(TreeSet::new));
        }
        Set<String> scanned =
                PROGRAM.stream()
                        .filter(JavaClass::isTopLevelClass)
                        .map(JavaClass::getName)
                        .filter(name -> !name.endsWith("package-info"))
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(written, scanned, "an empty scan would pass every rule in silence");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text     | words                         | what people typed and read, whatever for, in any language",
                "words    |                               | it is the floor: texts in every language, for all who show or give them",
                "science  | text words                    | the calculator must run anywhere, without lessons or a window; words typed by people are mended in one place",
                "recipe   | text words science            | a pasted line is read without a window, a batch or a lesson",
                "figure   | words                         | figures cross as data between processes, so they know only numbers and the words that describe them",
                "source   |                               | Java text is read in one place, by lessons, benches, windows and paper alike",
                "lesson   | text words source             | a lesson is text; who runs it or shows it is not its business",
                "bench    | text words source figure      | the bench puts the science on another class path and never calls it",
                "sight    | science figure                | a record becomes a drawing here, and nothing else does",
                "paint    | text words figure              | a plate is drawn from data alone, and its file written whole",
                "batch    | text words science recipe           | a batch is reckoned without lessons, benches or a window",
                "workbook | text words lesson                  | what is kept are values and text; who shows them or runs them is not its business",
                "help     | text words source bench       | help is words on the names that a bench finds; who shows them is not its business",
                "play     | text words source figure lesson bench workbook | a lesson is played in one place; who listens, and on which bench, is not its business",
                "print    | text words source science recipe figure lesson bench play paint batch workbook | paper is made of data and of what a lesson gave as it was played; who asks for a sheet or has a bench is not its business",
                "desk     | text words source science recipe figure lesson bench play paint batch workbook help print | the window knows all but the commands",
                "terminal | text words source science recipe figure lesson bench play paint batch workbook help print | the commands work where no window can",
            })
    void mayUseOnlyWhatStandsAboveIt(String name, String allowed, String reason) {
        String[] may =
                Stream.of((name + " " + (allowed == null ? "" : allowed)).strip().split(" +"))
                        .map(one -> "coldwright." + one + "..")
                        .toArray(String[]::new);
        holds(
                noClasses()
                        .that()
                        .resideInAPackage("coldwright." + name + "..")
                        .should()
                        .dependOnClassesThat(
                                resideInAPackage("coldwright..")
                                        .and(DescribedPredicate.not(resideInAnyPackage(may))))
                        .because(reason));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "javafx.. org.fxmisc.. | desk | a command must start without a graphics toolkit",
                "jdk.jshell.. com.sun.jdi.. | bench | how snippets run can change without anybody noticing",
                "org.knowm.xchart.. java.awt.. javax.swing.. javax.imageio.. org.apache.batik.. | paint | how figures are drawn can change without anybody noticing",
                "com.openhtmltopdf.. org.apache.pdfbox.. | print | how pages are set can change without anybody noticing",
                "org.objectweb.asm.. | bench | what a class file says matters only to who runs it",
                "picocli.. | terminal | how words become commands is the terminal's business",
                "org.hipparchus.. | science | numerics belong to the calculator",
                "com.fasterxml.. | terminal | how results are written out is the terminal's business",
            })
    void aLibraryHasOneHome(String library, String home, String reason) {
        holds(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("coldwright." + home + "..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(library.strip().split(" "))
                        .because(reason));
    }

    @Test
    void proseIsParsedInOnePlaceAndReadInThree() {
        holds(
                noClasses()
                        .that()
                        .resideOutsideOfPackages(
                                "coldwright.lesson..",
                                "coldwright.print..",
                                "coldwright.desk..",
                                "coldwright.terminal..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("org.commonmark..")
                        .because("only who shows prose needs its nodes"));
        holds(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("coldwright.lesson..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("org.commonmark.parser..")
                        .because("one parser with one set of options reads every lesson"));
    }

    @Test
    void thePackagesHaveNoCycles() {
        holds(
                slices().matching("coldwright.(*)..")
                        .should()
                        .beFreeOfCycles()
                        .because("data flows one way, from the lesson's text to the page"));
        holds(
                slices().matching("coldwright.(**)")
                        .should()
                        .beFreeOfCycles()
                        .because("a package that can't be understood alone is no package"));
    }

    @Test
    void theScienceTouchesNothingButItsOwnData() {
        holds(
                noClasses()
                        .that()
                        .resideInAPackage("coldwright.science..")
                        .should()
                        .dependOnClassesThat(
                                resideInAnyPackage(
                                                "java.nio.file..",
                                                "java.nio.channels..",
                                                "java.net..",
                                                "java.sql..",
                                                "java.util.logging..",
                                                "java.util.concurrent..",
                                                "java.util.prefs..")
                                        .or(
                                                JavaClass.Predicates.belongToAnyOf(
                                                        java.io.File.class,
                                                        java.io.FileInputStream.class,
                                                        java.io.FileOutputStream.class,
                                                        java.io.FileReader.class,
                                                        java.io.FileWriter.class,
                                                        java.io.RandomAccessFile.class,
                                                        java.io.PrintStream.class,
                                                        java.io.Console.class,
                                                        ProcessBuilder.class,
                                                        Thread.class)))
                        .because(
                                "it is called from snippets, windows and commands alike: it reads its own tables from the class path and reckons"));
    }

    @Test
    void nothingRunsOnThreadsThatAllShare() {
        DescribedPredicate<JavaAccess<?>> parallel =
                DescribedPredicate.describe(
                        "a stream or an array is worked on in parallel",
                        access ->
                                access.getName().startsWith("parallel")
                                        && access.getTargetOwner()
                                                .getPackageName()
                                                .startsWith("java.util"));
        holds(
                noClasses()
                        .should()
                        .accessTargetWhere(parallel)
                        .because(
                                "a snippet can keep the common threads busy for ever, and who needs a thread is given one"));
    }

    @Test
    void whatASnippetMakesOfTheScienceCannotChange() {
        List<String> known =
                List.of(
                        "coldwright.figure.Page", // says where figures go; nobody holds one
                        "coldwright.science.bath.BathRun", // runs, and the bench knows it does
                        "coldwright.science.freezer.Freeze", // set before anybody sees it
                        "coldwright.science.freezer.FreezingFormula", // likewise
                        "coldwright.science.freezing.Solute"); // keeps a table once it is made
        holds(
                classes()
                        .that()
                        .resideInAnyPackage("coldwright.science..", "coldwright.figure..")
                        .and()
                        .arePublic()
                        .and(
                                DescribedPredicate.describe(
                                        "are not known to change",
                                        type -> !known.contains(type.getName())))
                        .should()
                        .haveOnlyFinalFields()
                        .because(
                                "the bench runs a snippet's statements again where they stand if what they read of the steps above can't change"));
    }

    @Test
    void theProgramStartsInOnePlace() {
        holds(
                classes()
                        .that()
                        .resideInAPackage("coldwright")
                        .should()
                        .haveSimpleName("Main")
                        .because("the root holds the way in and nothing else"));
    }

    private static void holds(ArchRule rule) {
        rule.check(PROGRAM);
    }
}
