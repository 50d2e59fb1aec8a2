package coldwright.source;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonReader;
import coldwright.source.JavaToken.Kind;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The tokens of valid Java, compared with what the JDK's own compiler makes of the same text. */
class JavaSourceCompilerTest {
    private static final JavaCompiler JAVAC = ToolProvider.getSystemJavaCompiler();

    /** One for all texts: making it takes longer than parsing a text. */
    private static final StandardJavaFileManager FILES =
            JAVAC.getStandardFileManager(null, null, null);

    /** Every fourth source; each one where laws get more cases. */
    private static final int EVERY = Integer.getInteger("laws.cases", 1) > 1 ? 1 : 4;

    private int literals;
    private int names;

    @Test
    void agreesOnThisProgram() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            List<Path> sources =
                    files.filter(one -> one.toString().endsWith(".java")).sorted().toList();
            for (int i = 0; i < sources.size(); i += EVERY) {
                Path file = sources.get(i);
                String text = Files.readString(file);
                if (!text.contains("\\u")) { // which javac takes for the character itself
                    compare(file.toString(), text);
                }
            }
        }
        assertTrue(literals > 10_000 / EVERY && names > 50_000 / EVERY, literals + " " + names);
    }

    @Test
    void agreesOnTheLessons() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("lessons"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".md")).toList()) {
                for (LessonPart.Snippet snippet : snippets(file)) {
                    compare(file.toString(), "class A {{\n" + snippet.code() + "\n;}}");
                }
            }
        }
        assertTrue(literals > 300 && names > 300, literals + " " + names);
    }

    private static List<LessonPart.Snippet> snippets(Path file) {
        Lesson lesson = LessonReader.read(file);
        return lesson.steps().stream()
                .flatMap(step -> step.parts().stream())
                .filter(LessonPart.Snippet.class::isInstance)
                .map(LessonPart.Snippet.class::cast)
                .toList();
    }

    private void compare(String name, String text) throws IOException {
        JavaSource source = JavaSource.of(text);
        Map<Integer, JavaToken> byStart =
                source.tokens().stream().collect(Collectors.toMap(JavaToken::start, one -> one));
        Map<Integer, String> seen = new HashMap<>();
        JavacTask task =
                (JavacTask)
                        JAVAC.getTask(
                                null,
                                FILES,
                                problem -> {},
                                List.of("-proc:none"),
                                null,
                                List.of(new Text(text)));
        SourcePositions places = Trees.instance(task).getSourcePositions();
        for (CompilationUnitTree unit : task.parse()) {
            new TreeScanner<Void, Void>() {
                private String place(Tree tree) {
                    int start = (int) places.getStartPosition(unit, tree);
                    int end = (int) places.getEndPosition(unit, tree);
                    boolean minus = text.charAt(start) == '-' && tree instanceof LiteralTree;
                    JavaToken token = byStart.get(minus ? start + 1 : start);
                    String at = name + " " + start + ": " + text.substring(start, end);
                    assertNotNull(token, at);
                    for (JavaToken part = token;
                            part.end() <= end;
                            part = byStart.get(part.end())) {
                        boolean joined = token.isQuoted() && isJoining(part); // javac folds them
                        assertTrue(part.start() == token.start() || joined, at + " " + part);
                        seen.put(part.start(), at);
                        if (part.end() == end) {
                            return at + " " + token.kind();
                        }
                    }
                    throw new AssertionError(at + " " + token);
                }

                private boolean isJoining(JavaToken part) {
                    return part.isQuoted() || !part.isCode() || source.is(part, "+");
                }

                @Override
                public Void visitIdentifier(IdentifierTree tree, Void none) {
                    if (places.getEndPosition(unit, tree) > places.getStartPosition(unit, tree)) {
                        String at = place(tree);
                        assertTrue(at.endsWith(Kind.WORD.name()), at);
                        names++;
                    }
                    return null;
                }

                @Override
                public Void visitLiteral(LiteralTree tree, Void none) {
                    String at = place(tree);
                    Kind kind =
                            switch (tree.getKind()) {
                                case STRING_LITERAL ->
                                        at.contains(": \"\"\"") ? Kind.TEXT_BLOCK : Kind.STRING;
                                case CHAR_LITERAL -> Kind.CHARACTER;
                                case BOOLEAN_LITERAL, NULL_LITERAL -> Kind.WORD;
                                default -> Kind.NUMBER;
                            };
                    assertTrue(at.endsWith(" " + kind), at);
                    literals++;
                    return null;
                }
            }.scan(unit, null);
        }
        for (JavaToken token : source.tokens()) {
            if (token.isQuoted() || token.kind() == Kind.NUMBER) {
                assertTrue(
                        seen.containsKey(token.start()),
                        () -> name + " " + token + ": " + source.text(token));
            }
        }
    }

    private static final class Text extends SimpleJavaFileObject {
        private final String text;

        Text(String text) {
            super(URI.create("string:///A.java"), JavaFileObject.Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
