package coldwright.bench.compile;

import coldwright.bench.remote.CompiledClass;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Decides whether a step can leave traces in its process that outlive its classes: properties,
 * threads, files, library settings. If not, discarding the snippets' classes is as good as a fresh
 * process.
 *
 * <p>It reads the compiled classes, so it sees every method and class that the code uses, and it
 * errs on the side of caution: unknown code is assumed to leave traces.
 */
final class SideEffectAnalysis {
    /** Packages whose classes have no process-wide state. */
    private static final List<String> QUIET_PACKAGES =
            List.of(
                    "REPL/",
                    "coldwright/science/",
                    "coldwright/figure/",
                    "coldwright/sight/",
                    "org/hipparchus/",
                    "java/util/function/",
                    "java/util/stream/",
                    "java/math/");

    private static final Set<String> QUIET_CLASSES =
            named(
                    """
                    java/lang/ Object Math StrictMath Number Integer Long Short Byte Double
                      Float Boolean Character String StringBuilder CharSequence Comparable
                      Iterable Runnable Record Enum Void MatchException Exception
                      RuntimeException IllegalArgumentException IllegalStateException
                      ArithmeticException NumberFormatException IndexOutOfBoundsException
                      ArrayIndexOutOfBoundsException StringIndexOutOfBoundsException
                      NullPointerException ClassCastException NegativeArraySizeException
                      UnsupportedOperationException IncompatibleClassChangeError
                      NoSuchFieldError AssertionError
                    java/lang/invoke/ LambdaMetafactory StringConcatFactory MethodHandles
                      MethodHandles$Lookup
                    java/lang/runtime/ ObjectMethods SwitchBootstraps
                    java/util/ List ArrayList LinkedList Collection Collections Arrays Set
                      HashSet LinkedHashSet TreeSet SortedSet NavigableSet Map Map$Entry HashMap
                      LinkedHashMap TreeMap SortedMap NavigableMap EnumMap EnumSet Deque Queue
                      ArrayDeque PriorityQueue Iterator ListIterator PrimitiveIterator$OfInt
                      PrimitiveIterator$OfDouble Objects Optional OptionalDouble OptionalInt
                      OptionalLong Comparator Random StringJoiner BitSet DoubleSummaryStatistics
                      IntSummaryStatistics NoSuchElementException
                      ConcurrentModificationException
                    java/time/ Duration LocalDate LocalTime LocalDateTime Instant
                    java/text/ DecimalFormat
                    """);

    /** Side-effect-free methods of classes that have side effects otherwise. */
    private static final Set<String> QUIET_METHODS =
            named(
                    """
                    java/lang/System. currentTimeMillis nanoTime arraycopy identityHashCode
                      lineSeparator
                    java/lang/Class. getSimpleName getName
                    java/lang/Throwable. getMessage toString
                    java/util/Locale. of
                    java/io/PrintStream. print println printf format append write flush close
                    """);

    /** Methods with side effects in classes that have none otherwise. */
    private static final Set<String> LOUD_METHODS = Set.of("coldwright/figure/Page.readBy");

    private static final Set<String> QUIET_FIELDS =
            named(
                    """
                    java/lang/System. out err
                    java/util/Locale. ROOT US UK ENGLISH GERMANY GERMAN FRANCE
                    """);

    /** Catching these hides that the process has run out of a resource. */
    private static final Set<String> LOUD_CATCHES =
            Set.of(
                    SnippetClassFile.CAUGHT_ANYTHING,
                    "java/lang/Throwable",
                    "java/lang/Error",
                    "java/lang/VirtualMachineError",
                    "java/lang/StackOverflowError",
                    "java/lang/OutOfMemoryError");

    private SideEffectAnalysis() {}

    /**
     * Expands groups: the first word, which ends in a dot or a slash, is a prefix of the others.
     */
    private static Set<String> named(String groups) {
        Set<String> names = new HashSet<>();
        String begin = "";
        for (String word : groups.strip().split("\\s+")) {
            if (word.endsWith(".") || word.endsWith("/")) {
                begin = word;
            } else {
                names.add(begin + word);
            }
        }
        return names;
    }

    /**
     * Whether classes certainly leave no traces.
     *
     * @param classes all classes of a step
     */
    static boolean none(List<CompiledClass> classes) {
        return classes.stream().allMatch(code -> quiet(SnippetClassFile.of(code)));
    }

    private static boolean quiet(SnippetClassFile file) {
        return file.caught().stream().noneMatch(LOUD_CATCHES::contains)
                && file.calls().stream().allMatch(SideEffectAnalysis::quietCall)
                && file.reads().stream().allMatch(SideEffectAnalysis::quietRead);
    }

    private static boolean quietCall(String call) {
        return !LOUD_METHODS.contains(call)
                && (QUIET_METHODS.contains(call)
                        || quietOwner(call.substring(0, call.indexOf('.'))));
    }

    private static boolean quietRead(String field) {
        return QUIET_FIELDS.contains(field) || quietOwner(field.substring(0, field.indexOf('.')));
    }

    private static boolean quietOwner(String owner) {
        return owner.startsWith("[")
                || QUIET_CLASSES.contains(owner)
                || QUIET_PACKAGES.stream().anyMatch(owner::startsWith);
    }
}
