import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Writes the editor's help from the Javadoc of the types for snippets. Runs during the build as
 * {@code java WriteHelp SOURCES RESOURCES TARGET}; not part of the program.
 *
 * <p>One row for each public type, method, component and constant of the packages that the prelude
 * imports: name, owner, kind, signature, result, sentence, parameters, returns, and {@code bare} if
 * a snippet may use the name without its owner. Columns are separated by tabs, lines within a
 * column by {@code \n}; rows are sorted.
 */
final class WriteHelp {
    private static final Pattern STATIC_IMPORT =
            Pattern.compile("import static coldwright\\..*\\.([A-Z]\\w*)\\.(\\w+|\\*);");
    private static final Pattern IMPORT = Pattern.compile("import (coldwright\\.[a-z.]+)\\.\\*;");

    private final Path sources;
    private final Map<String, String> otherNames;
    private final TreeSet<String> rows = new TreeSet<>();
    private final List<Undocumented> undocumented = new ArrayList<>();
    private final Map<String, List<String>> documented = new TreeMap<>();
    private DocTrees docs;

    /** A method without Javadoc that overrides a method of one of these types. */
    private record Undocumented(List<String> head, List<String> above) {}

    private final TreeSet<String> bare = new TreeSet<>();

    private WriteHelp(Path sources, Path shelf) throws IOException {
        this.sources = sources;
        this.otherNames = otherNames(Files.readAllLines(shelf, StandardCharsets.UTF_8));
    }

    public static void main(String[] args) throws IOException {
        Path resources = Path.of(args[1]);
        WriteHelp help =
                new WriteHelp(
                        Path.of(args[0]), resources.resolve("coldwright/science/mix/shelf.csv"));
        List<String> packages = new ArrayList<>();
        for (String line : Files.readAllLines(resources.resolve("coldwright/lesson/prelude.txt"))) {
            Matcher found = IMPORT.matcher(line);
            if (found.matches()) {
                packages.add(found.group(1));
            }
            Matcher statics = STATIC_IMPORT.matcher(line);
            if (statics.matches()) {
                help.bare.add(statics.group(1) + "." + statics.group(2));
            }
        }
        help.read(packages);
        if (help.rows.size() < packages.size()) {
            throw new IllegalStateException("no help found in " + packages);
        }
        Path target = Path.of(args[2]);
        Files.createDirectories(target.toAbsolutePath().getParent());
        Files.writeString(target, String.join("\n", help.rows) + "\n", StandardCharsets.UTF_8);
    }

    private void read(List<String> packages) throws IOException {
        List<Path> files = new ArrayList<>();
        for (String one : packages) {
            try (Stream<Path> all = Files.list(sources.resolve(one.replace('.', '/')))) {
                all.filter(file -> file.toString().endsWith(".java"))
                        .filter(file -> !file.endsWith("package-info.java"))
                        .sorted()
                        .forEach(files::add);
            }
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task =
                    (JavacTask)
                            compiler.getTask(
                                    null,
                                    manager,
                                    null,
                                    List.of("-proc:none"),
                                    null,
                                    manager.getJavaFileObjectsFromPaths(files));
            docs = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                for (Tree type : unit.getTypeDecls()) {
                    if (type instanceof ClassTree one) {
                        type(one, new TreePath(new TreePath(unit), one), "", false);
                    }
                }
            }
        }
        undocumented.forEach(this::borrow);
    }

    private void type(ClassTree type, TreePath path, String outer, boolean open) {
        if (!open && !isPublic(type.getModifiers())) {
            return;
        }
        String name = type.getSimpleName().toString();
        String full = outer.isEmpty() ? name : outer + "." + name;
        DocCommentTree doc = docs.getDocCommentTree(path);
        List<VariableTree> parts = Signature.components(type);
        String kind = type.getKind().name().toLowerCase(Locale.ROOT).replace("class", "type");
        String signature = name;
        if (type.getKind() == Tree.Kind.RECORD) {
            signature += Signature.parameters(parts);
        } else if (type.getKind() == Tree.Kind.ENUM) {
            signature += ": " + String.join(", ", Signature.choices(type));
        }
        row(List.of(name, outer, kind, signature, full), DocWords.all(doc, ""));
        for (VariableTree part : parts) {
            String called = part.getName().toString();
            row(
                    List.of(
                            called,
                            full,
                            "component",
                            called + "()" + Signature.arrow(called, part.getType()),
                            Signature.plain(part.getType())),
                    List.of(DocWords.sentence(DocWords.parameter(doc, called)), "", ""));
        }
        boolean within = type.getKind() == Tree.Kind.INTERFACE;
        List<String> above = new ArrayList<>();
        type.getImplementsClause().forEach(one -> above.add(Signature.plain(one)));
        if (type.getExtendsClause() != null) {
            above.add(Signature.plain(type.getExtendsClause()));
        }
        for (Tree member : type.getMembers()) {
            TreePath at = new TreePath(path, member);
            if (member instanceof ClassTree inner) {
                type(inner, at, full, within);
            } else if (member instanceof MethodTree method
                    && (within || isPublic(method.getModifiers()))) {
                method(method, at, full, above, parts);
            } else if (member instanceof VariableTree field) {
                field(field, at, full, within);
            }
        }
    }

    private void method(
            MethodTree method,
            TreePath path,
            String owner,
            List<String> above,
            List<VariableTree> parts) {
        String name = method.getName().toString();
        boolean component =
                method.getParameters().isEmpty()
                        && parts.stream().anyMatch(one -> one.getName().contentEquals(name));
        if (method.getReturnType() == null
                || component
                || method.getModifiers().getFlags().contains(Modifier.PRIVATE)) {
            return;
        }
        boolean onType = method.getModifiers().getFlags().contains(Modifier.STATIC);
        DocCommentTree doc = docs.getDocCommentTree(path);
        List<String> head =
                List.of(
                        name,
                        owner,
                        onType ? "function" : "method",
                        name
                                + Signature.parameters(method.getParameters())
                                + Signature.arrow(name, method.getReturnType()),
                        Signature.plain(method.getReturnType()));
        if (doc != null) {
            String parameters =
                    method.getParameters().stream()
                            .map(one -> one.getName().toString())
                            .filter(one -> !DocWords.parameter(doc, one).isEmpty())
                            .map(one -> one + ": " + DocWords.parameter(doc, one))
                            .collect(Collectors.joining("\\n"));
            row(head, DocWords.all(doc, parameters));
        } else if (method.getModifiers().getAnnotations().isEmpty()) {
            row(head, List.of("", "", ""));
        } else {
            undocumented.add(new Undocumented(head, above));
        }
    }

    private void field(VariableTree field, TreePath path, String owner, boolean open) {
        ModifiersTree modifiers = field.getModifiers();
        boolean constant =
                modifiers.getFlags().containsAll(List.of(Modifier.STATIC, Modifier.FINAL));
        if (!open && !(isPublic(modifiers) && constant)) {
            return;
        }
        String name = field.getName().toString();
        String type = Signature.plain(field.getType());
        List<String> words = DocWords.all(docs.getDocCommentTree(path), "");
        if (Signature.isChoice(field)) {
            row(List.of(name, owner, "choice", name, owner), words);
        } else if (owner.equals("Shelf") && type.equals("Ingredient")) {
            if (field.getInitializer() instanceof MethodInvocationTree row) {
                Object plain =
                        ((com.sun.source.tree.LiteralTree) row.getArguments().get(0)).getValue();
                String others = otherNames.getOrDefault(plain.toString(), "");
                String sentence = plain + (others.isEmpty() ? "" : ", also called " + others);
                words = List.of(DocWords.sentence(sentence), "", "");
            }
            row(List.of(name, owner, "ingredient", name, type), words);
        } else {
            row(
                    List.of(
                            name,
                            owner,
                            "constant",
                            name + Signature.arrow(name, field.getType()),
                            type),
                    words);
        }
    }

    /** Copies the text of the overridden method. */
    private void borrow(Undocumented method) {
        String name = method.head().get(0);
        method.above().stream()
                .map(type -> documented.get(type + "." + name))
                .filter(words -> words != null)
                .findFirst()
                .ifPresent(words -> row(method.head(), words));
    }

    private void row(List<String> head, List<String> words) {
        documented.putIfAbsent(head.get(1) + "." + head.get(0), words);
        String owner = head.get(1);
        boolean onType = !head.get(2).equals("method") && !head.get(2).equals("component");
        boolean free =
                owner.isEmpty()
                        || onType && bare.contains(owner + ".*")
                        || onType && bare.contains(owner + "." + head.get(0));
        rows.add(
                String.join("\t", head)
                        + "\t"
                        + String.join("\t", words)
                        + "\t"
                        + (free ? "bare" : ""));
    }

    private static boolean isPublic(ModifiersTree modifiers) {
        return modifiers.getFlags().contains(Modifier.PUBLIC);
    }

    private static Map<String, String> otherNames(List<String> shelf) {
        Map<String, String> names = new LinkedHashMap<>();
        Pattern row = Pattern.compile("^(?:\"([^\"]*)\"|([^,]*)),(?:\"([^\"]*)\"|([^,]*)),.*");
        for (String line : shelf) {
            Matcher found = row.matcher(line);
            if (!line.startsWith("#") && found.matches()) {
                String name = found.group(1) == null ? found.group(2) : found.group(1);
                String others = found.group(3) == null ? found.group(4) : found.group(3);
                names.put(name, others.replace("; ", ", "));
            }
        }
        return Collections.unmodifiableMap(names);
    }
}
