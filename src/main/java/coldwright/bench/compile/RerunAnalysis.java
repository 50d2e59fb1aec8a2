package coldwright.bench.compile;

import coldwright.bench.confine.SnippetClassFile;
import coldwright.bench.confine.SnippetClassFile.FieldAccess;
import coldwright.bench.remote.CompiledClass;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Decides whether the statements of a step can run again in place, without a fresh start. They can
 * if they change only their own step's variables, and each variable is set again by its
 * declaration.
 *
 * <p>It reads the compiled classes and errs on the side of caution: a step may read a variable from
 * above only if its type is immutable, such as a number or a mix; a list might have grown.
 */
final class RerunAnalysis {
    private static final Set<String> UNCHANGING_TYPES =
            Set.of(
                    "Ljava/lang/String;",
                    "Ljava/lang/Integer;",
                    "Ljava/lang/Long;",
                    "Ljava/lang/Double;",
                    "Ljava/lang/Float;",
                    "Ljava/lang/Boolean;",
                    "Ljava/lang/Character;");

    /** Packages with only immutable types. */
    private static final List<String> UNCHANGING_PACKAGES =
            List.of("Lcoldwright/science/", "Lcoldwright/figure/");

    /** A running bath is the only mutable object in package science. */
    private static final Set<String> CHANGING_TYPES = Set.of("Lcoldwright/science/bath/BathRun;");

    /** Catching these hides that the process has run out of a resource. */
    private static final Set<String> LOUD_CATCHES =
            Set.of(
                    SnippetClassFile.CAUGHT_ANYTHING,
                    "java/lang/Throwable",
                    "java/lang/Error",
                    "java/lang/VirtualMachineError",
                    "java/lang/StackOverflowError",
                    "java/lang/OutOfMemoryError");

    /** Prefix of the methods that JShell makes of statements; those of steps above aren't rerun. */
    private static final String STATEMENT = "do_it$";

    private final Map<String, SnippetClassFile> known;
    private final Set<String> own = new HashSet<>();
    private final Set<String> holders = new HashSet<>();

    private RerunAnalysis(Map<String, SnippetClassFile> known) {
        this.known = known;
    }

    /** Whether classes might catch what a failing process throws. */
    static boolean catchesErrors(List<CompiledClass> step) {
        return step.stream()
                .flatMap(code -> SnippetClassFile.of(code).caught().stream())
                .anyMatch(LOUD_CATCHES::contains);
    }

    /**
     * Whether a step can run again.
     *
     * @param step its classes
     * @param above all classes of the steps above
     * @return false if it might change anything else
     */
    static boolean judge(List<CompiledClass> step, List<CompiledClass> above) {
        Map<String, SnippetClassFile> known = new HashMap<>();
        above.forEach(code -> known.put(code.name(), SnippetClassFile.of(code)));
        RerunAnalysis judge = new RerunAnalysis(known);
        for (CompiledClass code : step) {
            known.put(code.name(), SnippetClassFile.of(code));
            judge.own.add(code.name());
            if (!inner(code.name())) {
                judge.holders.add(code.name().replace('.', '/'));
            }
        }
        return judge.all();
    }

    private static boolean inner(String name) {
        return name.indexOf('$', name.lastIndexOf("$JShell$") + "$JShell$".length()) >= 0;
    }

    private boolean all() {
        Deque<String> open = new ArrayDeque<>(own);
        Set<String> seen = new HashSet<>(own);
        while (!open.isEmpty()) {
            SnippetClassFile file = known.get(open.remove());
            if (file == null || !harmless(file)) {
                return false;
            }
            file.snippetClasses().stream().filter(seen::add).forEach(open::add);
        }
        return true;
    }

    private boolean harmless(SnippetClassFile file) {
        boolean mine = own.contains(file.name().replace('/', '.'));
        if (mine && file.keepsStatics() && !holders.contains(file.name())) {
            return false;
        }
        return file.touches().stream()
                .filter(fieldAccess -> mine || !fieldAccess.method().contains(STATEMENT))
                .allMatch(this::harmless);
    }

    private boolean harmless(FieldAccess fieldAccess) {
        if (!OrderCompleter.isSnippet(fieldAccess.owner().replace('/', '.'))) {
            return !fieldAccess.write();
        }
        return holders.contains(fieldAccess.owner())
                || !fieldAccess.write() && unchanging(fieldAccess.descriptor());
    }

    private static boolean unchanging(String descriptor) {
        return descriptor.length() == 1
                || UNCHANGING_TYPES.contains(descriptor)
                || !CHANGING_TYPES.contains(descriptor)
                        && UNCHANGING_PACKAGES.stream().anyMatch(descriptor::startsWith);
    }
}
