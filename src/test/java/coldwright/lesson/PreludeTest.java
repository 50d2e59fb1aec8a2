package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.lang.reflect.Member;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;

/** The imports of every snippet resolve, and no two of them bring the same name. */
class PreludeTest {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    @TempDir Path folder;

    static List<String> imports() {
        return Prelude.imports();
    }

    @ParameterizedTest
    @MethodSource("imports")
    void resolves(String declaration) throws IOException {
        assertEquals(List.of(), problemsOf(declaration + " class Snippet {}"));
    }

    @Test
    void aSnippetReadsLikeTheTrade() throws IOException {
        String body =
                "Mix mix = Mix.of(grams(500, WHOLE_MILK), grams(max(100, 130), SUCROSE));"
                        + " List<Double> all = Stream.of(abs(-1.0), PI).toList(); show(Figure.of(\"a\"));";
        assertEquals(
                List.of(),
                problemsOf(
                        String.join("\n", imports())
                                + " class Snippet { static { "
                                + body
                                + " } }"));
    }

    @Test
    void everyRoomOfTheScienceIsOpen() throws IOException {
        Path science = Path.of("src/main/java/coldwright/science");
        try (Stream<Path> rooms = Files.list(science)) {
            List<String> closed =
                    rooms.filter(Files::isDirectory)
                            // These judge a recipe for the batch page; lessons calculate.
                            .filter(room -> !room.endsWith("plan") && !room.endsWith("style"))
                            .map(room -> "import coldwright.science." + room.getFileName() + ".*;")
                            .filter(declaration -> !imports().contains(declaration))
                            .toList();
            assertEquals(List.of(), closed);
        }
    }

    @Test
    void noTwoBringTheSameType() throws IOException {
        Map<String, Set<String>> bringers = new TreeMap<>();
        packageNames("java.lang").forEach(name -> add(bringers, name, "java.lang"));
        for (String declaration : imports()) {
            String of = declaration.replaceAll("import |\\.\\*;", "");
            if (declaration.endsWith(".*;") && !declaration.startsWith("import static")) {
                packageNames(of).forEach(name -> add(bringers, name, of));
            }
        }
        assertTrue(bringers.size() > 100, "only " + bringers.size() + " types were looked at");
        assertEquals(List.of(), shared(bringers));
    }

    @Test
    void noTwoBringTheSameMember() throws ReflectiveOperationException {
        Map<String, Set<String>> bringers = new TreeMap<>();
        for (String declaration : imports()) {
            if (declaration.startsWith("import static ")) {
                String of = declaration.replaceAll("import static |;", "");
                Class<?> holder = Class.forName(of.substring(0, of.lastIndexOf('.')));
                String wanted = of.substring(of.lastIndexOf('.') + 1);
                membersOf(holder)
                        .filter(name -> wanted.equals("*") || name.equals(wanted + "()"))
                        .forEach(name -> add(bringers, name, holder.getName()));
            }
        }
        assertTrue(bringers.size() > 50, "only " + bringers.size() + " members were looked at");
        assertEquals(List.of(), shared(bringers));
    }

    private static void add(Map<String, Set<String>> bringers, String name, String of) {
        bringers.computeIfAbsent(name, any -> new TreeSet<>()).add(of);
    }

    private static List<String> shared(Map<String, Set<String>> bringers) {
        return bringers.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(Object::toString)
                .toList();
    }

    private static Stream<String> membersOf(Class<?> holder) {
        Stream<String> fields = publicStatic(holder.getFields()).map(Member::getName);
        Stream<String> methods = publicStatic(holder.getMethods()).map(m -> m.getName() + "()");
        return Stream.concat(fields, methods);
    }

    private static Stream<Member> publicStatic(Member[] members) {
        return Arrays.stream(members).filter(m -> Modifier.isStatic(m.getModifiers()));
    }

    /** The simple names of the public types of a package. */
    private static Set<String> packageNames(String name) throws IOException {
        Set<String> names = new TreeSet<>();
        try (StandardJavaFileManager files = COMPILER.getStandardFileManager(null, null, null)) {
            for (StandardLocation place :
                    List.of(StandardLocation.CLASS_PATH, StandardLocation.SYSTEM_MODULES)) {
                for (JavaFileManagerPlace one : places(files, place)) {
                    for (JavaFileObject file :
                            files.list(
                                    one.location(),
                                    name,
                                    Set.of(JavaFileObject.Kind.CLASS),
                                    false)) {
                        String binary = files.inferBinaryName(one.location(), file);
                        if (isPublicTopLevel(binary)) {
                            names.add(binary.substring(binary.lastIndexOf('.') + 1));
                        }
                    }
                }
            }
        }
        return names;
    }

    private record JavaFileManagerPlace(javax.tools.JavaFileManager.Location location) {}

    private static List<JavaFileManagerPlace> places(
            StandardJavaFileManager files, StandardLocation place) throws IOException {
        if (place == StandardLocation.CLASS_PATH) {
            return List.of(new JavaFileManagerPlace(place));
        }
        return List.of(new JavaFileManagerPlace(files.getLocationForModule(place, "java.base")));
    }

    private static boolean isPublicTopLevel(String binaryName) {
        if (binaryName.contains("$") || binaryName.endsWith("-info")) {
            return false;
        }
        try {
            Class<?> type = Class.forName(binaryName, false, PreludeTest.class.getClassLoader());
            return Modifier.isPublic(type.getModifiers());
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    private List<String> problemsOf(String code) throws IOException {
        DiagnosticCollector<JavaFileObject> problems = new DiagnosticCollector<>();
        JavaFileObject source =
                new SimpleJavaFileObject(
                        URI.create("string:///Snippet.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return code;
                    }
                };
        try (StandardJavaFileManager files =
                COMPILER.getStandardFileManager(problems, null, null)) {
            files.setLocationFromPaths(
                    StandardLocation.CLASS_OUTPUT, List.of(Files.createDirectories(folder)));
            COMPILER.getTask(null, files, problems, List.of("-proc:none"), null, List.of(source))
                    .call();
        }
        List<String> words = new ArrayList<>();
        for (Diagnostic<? extends JavaFileObject> problem : problems.getDiagnostics()) {
            words.add(problem.getMessage(null));
        }
        return words;
    }
}
