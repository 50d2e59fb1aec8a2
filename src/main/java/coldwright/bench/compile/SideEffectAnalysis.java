package coldwright.bench.compile;

import coldwright.bench.remote.CompiledClass;

import java.util.List;
import java.util.Set;

/**
 * Judges whether a step can leave traces in its process that outlive its own classes: properties,
 * threads, files, settings of the library. If none can be left, forgetting the snippets' classes is
 * as good as a fresh process.
 *
 * <p>It reads the compiled classes, so it sees every method and class that the code names, however
 * the text was written, and it errs towards caution: what it does not know leaves traces.
 */
final class SideEffectAnalysis {
    /** Packages whose classes keep nothing for the whole process. */
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
            Set.of(
                    "java/lang/Object",
                    "java/lang/Math",
                    "java/lang/StrictMath",
                    "java/lang/Number",
                    "java/lang/Integer",
                    "java/lang/Long",
                    "java/lang/Short",
                    "java/lang/Byte",
                    "java/lang/Double",
                    "java/lang/Float",
                    "java/lang/Boolean",
                    "java/lang/Character",
                    "java/lang/String",
                    "java/lang/StringBuilder",
                    "java/lang/CharSequence",
                    "java/lang/Comparable",
                    "java/lang/Iterable",
                    "java/lang/Runnable",
                    "java/lang/Record",
                    "java/lang/Enum",
                    "java/lang/Void",
                    "java/lang/MatchException",
                    "java/lang/Exception",
                    "java/lang/RuntimeException",
                    "java/lang/IllegalArgumentException",
                    "java/lang/IllegalStateException",
                    "java/lang/ArithmeticException",
                    "java/lang/NumberFormatException",
                    "java/lang/IndexOutOfBoundsException",
                    "java/lang/ArrayIndexOutOfBoundsException",
                    "java/lang/StringIndexOutOfBoundsException",
                    "java/lang/NullPointerException",
                    "java/lang/ClassCastException",
                    "java/lang/NegativeArraySizeException",
                    "java/lang/UnsupportedOperationException",
                    "java/lang/IncompatibleClassChangeError",
                    "java/lang/NoSuchFieldError",
                    "java/lang/AssertionError",
                    "java/lang/invoke/LambdaMetafactory",
                    "java/lang/invoke/StringConcatFactory",
                    "java/lang/invoke/MethodHandles",
                    "java/lang/invoke/MethodHandles$Lookup",
                    "java/lang/runtime/ObjectMethods",
                    "java/lang/runtime/SwitchBootstraps",
                    "java/util/List",
                    "java/util/ArrayList",
                    "java/util/LinkedList",
                    "java/util/Collection",
                    "java/util/Collections",
                    "java/util/Arrays",
                    "java/util/Set",
                    "java/util/HashSet",
                    "java/util/LinkedHashSet",
                    "java/util/TreeSet",
                    "java/util/SortedSet",
                    "java/util/NavigableSet",
                    "java/util/Map",
                    "java/util/Map$Entry",
                    "java/util/HashMap",
                    "java/util/LinkedHashMap",
                    "java/util/TreeMap",
                    "java/util/SortedMap",
                    "java/util/NavigableMap",
                    "java/util/EnumMap",
                    "java/util/EnumSet",
                    "java/util/Deque",
                    "java/util/Queue",
                    "java/util/ArrayDeque",
                    "java/util/PriorityQueue",
                    "java/util/Iterator",
                    "java/util/ListIterator",
                    "java/util/PrimitiveIterator$OfInt",
                    "java/util/PrimitiveIterator$OfDouble",
                    "java/util/Objects",
                    "java/util/Optional",
                    "java/util/OptionalDouble",
                    "java/util/OptionalInt",
                    "java/util/OptionalLong",
                    "java/util/Comparator",
                    "java/util/Random",
                    "java/util/StringJoiner",
                    "java/util/BitSet",
                    "java/util/DoubleSummaryStatistics",
                    "java/util/IntSummaryStatistics",
                    "java/util/NoSuchElementException",
                    "java/util/ConcurrentModificationException",
                    "java/time/Duration",
                    "java/time/LocalDate",
                    "java/time/LocalTime",
                    "java/time/LocalDateTime",
                    "java/time/Instant",
                    "java/text/DecimalFormat");

    /** Single methods of classes that are not quiet as a whole. */
    private static final Set<String> QUIET_METHODS =
            Set.of(
                    "java/lang/System.currentTimeMillis",
                    "java/lang/System.nanoTime",
                    "java/lang/System.arraycopy",
                    "java/lang/System.identityHashCode",
                    "java/lang/System.lineSeparator",
                    "java/lang/Class.getSimpleName",
                    "java/lang/Class.getName",
                    "java/lang/Throwable.getMessage",
                    "java/lang/Throwable.toString",
                    "java/util/Locale.of",
                    "java/io/PrintStream.print",
                    "java/io/PrintStream.println",
                    "java/io/PrintStream.printf",
                    "java/io/PrintStream.format",
                    "java/io/PrintStream.append",
                    "java/io/PrintStream.write",
                    "java/io/PrintStream.flush",
                    "java/io/PrintStream.close");

    /** Methods that are not quiet though their class is. */
    private static final Set<String> LOUD_METHODS = Set.of("coldwright/figure/Page.readBy");

    private static final Set<String> QUIET_FIELDS =
            Set.of(
                    "java/lang/System.out",
                    "java/lang/System.err",
                    "java/util/Locale.ROOT",
                    "java/util/Locale.US",
                    "java/util/Locale.UK",
                    "java/util/Locale.ENGLISH",
                    "java/util/Locale.GERMANY",
                    "java/util/Locale.GERMAN",
                    "java/util/Locale.FRANCE");

    /** Catching these hides that the process has run out of something. */
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
     * Whether classes certainly leave no traces.
     *
     * @param classes all classes of a step
     * @return false if they might
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
