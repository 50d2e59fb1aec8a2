import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.TextTree;
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
import java.util.Arrays;
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
 * Writes the help that the editor shows from the Javadoc of what snippets may use. Runs while the
 * program is built, as {@code java WriteHelp.java SOURCES RESOURCES TARGET}, and is no part of it.
 *
 * <p>One row for each public type, method, component and constant of the packages that the prelude
 * imports: name, owner, kind, signature, result, sentence, parameters, returns, and {@code bare} if
 * a snippet may use the name without its owner. Columns are parted by tabs, lines within a column
 * by {@code \n}; rows are sorted.
 */
final class WriteHelp {
    private static final Pattern STATIC_IMPORT =
            Pattern.compile("import static coldwright\\..*\\.([A-Z]\\w*)\\.(\\w+|\\*);");
    private static final Pattern IMPORT = Pattern.compile("import (coldwright\\.[a-z.]+)\\.\\*;");

    /** Unit by what the name of a number ends with, longer endings first. */
    private static final Map<String, String> UNITS = units();

    private static final Pattern UNIT_IN_NAME =
            Pattern.compile(
                    "(?:(?<=[a-z0-9])("
                            + String.join("|", UNITS.keySet())
                            + ")|^(percent))(?:(?:At|Of|For|From|To|In|Between|When|With|After)(?=[A-Z]|$).*)?$");
    private static final Pattern NUMBER = Pattern.compile("(double|int|long)(\\[\\]|\\.\\.\\.)?");

    private final Path sources;
    private final Map<String, String> otherNames;
    private final TreeSet<String> rows = new TreeSet<>();
    private final List<Undocumented> undocumented = new ArrayList<>();
    private final Map<String, List<String>> documented = new TreeMap<>();
    private DocTrees docs;

    /** A method that overrides one of these types and leaves the words to it. */
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
        List<VariableTree> parts = components(type);
        String kind = type.getKind().name().toLowerCase(Locale.ROOT).replace("class", "type");
        String signature = name;
        if (type.getKind() == Tree.Kind.RECORD) {
            signature += parameters(parts);
        } else if (type.getKind() == Tree.Kind.ENUM) {
            signature += ": " + String.join(", ", choices(type));
        }
        row(List.of(name, outer, kind, signature, full), words(doc, ""));
        for (VariableTree part : parts) {
            String called = part.getName().toString();
            row(
                    List.of(
                            called,
                            full,
                            "component",
                            called + "()" + arrow(called, part.getType()),
                            plain(part.getType())),
                    List.of(sentence(parameter(doc, called)), "", ""));
        }
        boolean within = type.getKind() == Tree.Kind.INTERFACE;
        List<String> above = new ArrayList<>();
        type.getImplementsClause().forEach(one -> above.add(plain(one)));
        if (type.getExtendsClause() != null) {
            above.add(plain(type.getExtendsClause()));
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
                                + parameters(method.getParameters())
                                + arrow(name, method.getReturnType()),
                        plain(method.getReturnType()));
        if (doc != null) {
            String parameters =
                    method.getParameters().stream()
                            .map(one -> one.getName().toString())
                            .filter(one -> !parameter(doc, one).isEmpty())
                            .map(one -> one + ": " + parameter(doc, one))
                            .collect(Collectors.joining("\\n"));
            row(head, words(doc, parameters));
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
        String type = plain(field.getType());
        List<String> words = words(docs.getDocCommentTree(path), "");
        if (isChoice(field)) {
            row(List.of(name, owner, "choice", name, owner), words);
        } else if (owner.equals("Shelf")
                && field.getInitializer() instanceof MethodInvocationTree row) {
            Object plain = ((com.sun.source.tree.LiteralTree) row.getArguments().get(0)).getValue();
            String others = otherNames.getOrDefault(plain.toString(), "");
            String sentence = plain + (others.isEmpty() ? "" : ", also called " + others);
            row(
                    List.of(name, owner, "ingredient", name, type),
                    List.of(sentence(sentence), "", ""));
        } else {
            row(List.of(name, owner, "constant", name + arrow(name, field.getType()), type), words);
        }
    }

    /** Takes the words of the method that is overridden. */
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

    private List<String> words(DocCommentTree doc, String parameters) {
        if (doc == null) {
            return List.of("", parameters, "");
        }
        String returns =
                Stream.concat(doc.getFirstSentence().stream(), doc.getBlockTags().stream())
                        .filter(ReturnTree.class::isInstance)
                        .map(tag -> text(((ReturnTree) tag).getDescription()))
                        .findFirst()
                        .orElse("");
        return List.of(sentence(text(doc.getFirstSentence())), parameters, returns);
    }

    private String parameter(DocCommentTree doc, String name) {
        return doc == null
                ? ""
                : doc.getBlockTags().stream()
                        .filter(ParamTree.class::isInstance)
                        .map(ParamTree.class::cast)
                        .filter(tag -> tag.getName().getName().contentEquals(name))
                        .map(tag -> text(tag.getDescription()))
                        .findFirst()
                        .orElse("");
    }

    private static String sentence(String words) {
        String whole = words.isEmpty() || words.endsWith(".") ? words : words + ".";
        return capital(whole);
    }

    private static String capital(String words) {
        return words.isEmpty()
                ? ""
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String text(List<? extends DocTree> trees) {
        StringBuilder text = new StringBuilder();
        for (DocTree tree : trees) {
            if (tree instanceof TextTree plain) {
                text.append(plain.getBody());
            } else if (tree instanceof LiteralTree literal) {
                text.append(literal.getBody().getBody());
            } else if (tree instanceof LinkTree link) {
                String label = text(link.getLabel());
                String target = link.getReference().getSignature().replaceFirst("^#", "");
                text.append(label.isEmpty() ? target.replace('#', '.') : label);
            } else if (tree instanceof ReturnTree returns) {
                text.append(text(returns.getDescription()));
            } else if (tree instanceof EntityTree entity) {
                text.append(
                        Map.of("lt", "<", "gt", ">", "amp", "&", "nbsp", " ")
                                .getOrDefault(entity.getName().toString(), ""));
            }
        }
        return text.toString().replaceAll("\\s+", " ").strip();
    }

    private static String parameters(List<? extends VariableTree> parameters) {
        return parameters.stream()
                .map(
                        one -> {
                            String name = one.getName().toString();
                            String type = plain(one.getType());
                            String unit = unit(name, type);
                            if (!unit.isEmpty()) {
                                return name + " in " + unit;
                            }
                            boolean told = type.equals("double") || type.equalsIgnoreCase(name);
                            return told ? name : spoken(type) + " " + name;
                        })
                .collect(Collectors.joining(", ", "(", ")"));
    }

    private static String spoken(String type) {
        return type.replace("double[]", "numbers")
                .replace("[]", "…")
                .replaceAll("\\bdouble\\b", "number")
                .replaceAll("\\bint\\b", "whole number")
                .replaceAll("DoubleUnaryOperator|DoubleFunction<.*>", "function");
    }

    private static String arrow(String name, Tree type) {
        String unit = unit(name, plain(type));
        if (plain(type).equals("void")) {
            return "";
        }
        return " → " + (unit.isEmpty() ? spoken(plain(type)) : unit);
    }

    private static String unit(String name, String type) {
        Matcher found =
                UNIT_IN_NAME.matcher(
                        name.contains("_") || name.equals(name.toUpperCase(Locale.ROOT))
                                ? camel(name)
                                : name);
        if (!NUMBER.matcher(type).matches() || !found.find()) {
            return "";
        }
        return found.group(1) == null ? "%" : UNITS.get(found.group(1));
    }

    /** The name of a constant as one of a variable. */
    private static String camel(String constant) {
        return Arrays.stream(constant.split("_"))
                .map(word -> capital(word.toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining());
    }

    private static String plain(Tree type) {
        return type.toString()
                .replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "")
                .replaceAll("\\s+", " ")
                .replaceAll("@\\w+ ?", "");
    }

    private static List<VariableTree> components(ClassTree type) {
        if (type.getKind() != Tree.Kind.RECORD) {
            return List.of();
        }
        return fields(type)
                .filter(one -> !one.getModifiers().getFlags().contains(Modifier.STATIC))
                .toList();
    }

    private static List<String> choices(ClassTree type) {
        return fields(type)
                .filter(WriteHelp::isChoice)
                .map(one -> one.getName().toString())
                .toList();
    }

    private static Stream<VariableTree> fields(ClassTree type) {
        return type.getMembers().stream()
                .filter(VariableTree.class::isInstance)
                .map(VariableTree.class::cast);
    }

    /** The parser writes an enum's constant as a field made with {@code new}, marked so. */
    private static boolean isChoice(VariableTree field) {
        return field.toString().strip().startsWith("/*public static final*/");
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

    private static Map<String, String> units() {
        String pairs =
                """
                Per100gWater=g per 100 g of water; WPerMK=W/(m·K); WPerM2K=W/(m²·K); WPerM2=W/m²;
                JPerGK=J/(g·K); JPerG=J/g; GPerMol=g/mol; KgPerM3=kg/m³; KgPerL=kg/L; MPaS=mPa·s;
                PaS=Pa·s; KPerMin=K/min; UmPerS=µm/s; PerMl=per mL; PerUm=per µm; PerS=per s;
                VolumePercent=% by volume; PercentOfMix=% of the mix; Percent=%; Millimol=mmol;
                Minutes=minutes; Hours=hours; Seconds=s; Days=days; Ml=mL; Um2=µm²; M2=m²; Mm=mm;
                Um=µm; Nm=nm; KJ=kJ; Kg=kg; C=°C; G=g; K=K; J=J; L=L; M=m; W=W; S=s""";
        Map<String, String> units = new LinkedHashMap<>();
        for (String pair : pairs.split(";\\s+")) {
            units.put(pair.split("=")[0], pair.split("=")[1]);
        }
        return units;
    }
}
