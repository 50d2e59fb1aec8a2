package coldwright.bench;

import coldwright.bench.remote.ThrownException;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Messages for exceptions that a snippet threw. */
final class ExceptionMessages {
    private static final Pattern OUT_OF_BOUNDS =
            Pattern.compile("[Ii]ndex (-?\\d+) out of bounds for length (\\d+)");
    private static final Pattern NULL_NAME =
            Pattern.compile("because \"(?:[^\"]*\\.)?([^\".]+)\" is null");
    private static final Pattern INPUT = Pattern.compile("For input string: \"([^\"]*)\"");

    private static final Map<String, String> FIXED =
            Map.ofEntries(
                    Map.entry(
                            "java.lang.StackOverflowError",
                            "a method calls itself without end; give it a case in which it stops"),
                    Map.entry(
                            "java.util.ConcurrentModificationException",
                            "a list was changed while a loop went through it; change a copy instead"),
                    Map.entry(
                            "java.lang.ClassCastException",
                            "a value is of another kind than the brackets before it claim"),
                    Map.entry(
                            "java.lang.ArrayStoreException",
                            "a value is of another kind than this array holds"),
                    Map.entry(
                            "java.util.NoSuchElementException",
                            "there is nothing left to take; a snippet can't ask at the keyboard either,"
                                    + " so write the value into it"),
                    Map.entry(
                            "java.util.InputMismatchException",
                            "what was read is not of the kind that was asked for"),
                    Map.entry(
                            "jdk.jshell.spi.SPIResolutionException",
                            "something was called before all that it uses was declared; move the"
                                    + " declaration up"),
                    Map.entry(
                            "java.lang.NoClassDefFoundError",
                            "a class could not get ready when it was first used"),
                    Map.entry(
                            "java.lang.InterruptedException",
                            "this was interrupted while it waited"));

    private ExceptionMessages() {}

    /**
     * A one-sentence message for an exception.
     *
     * @param chain the exception, then its causes
     * @param heapMb the bench's heap, MB
     */
    static String words(List<ThrownException> chain, int heapMb) {
        ThrownException first = chain.get(0);
        if (chain.size() > 1 && wraps(first)) {
            return words(chain.subList(1, chain.size()), heapMb);
        }
        return known(first, heapMb)
                .or(() -> Optional.ofNullable(FIXED.get(first.className())))
                .orElseGet(() -> plain(first));
    }

    private static boolean wraps(ThrownException thrownException) {
        return thrownException.className().equals("java.lang.ExceptionInInitializerError")
                || thrownException.className().equals("java.util.concurrent.ExecutionException")
                || thrownException
                        .className()
                        .equals("java.lang.reflect.InvocationTargetException");
    }

    private static Optional<String> known(ThrownException thrownException, int heapMb) {
        String message = thrownException.message();
        switch (thrownException.className()) {
            case "java.lang.OutOfMemoryError":
                return Optional.of(memory(message, heapMb));
            case "java.lang.ArithmeticException":
                return message.equals("/ by zero")
                        ? Optional.of("a whole number was divided by zero; check the divisor first")
                        : Optional.empty();
            case "java.lang.NullPointerException":
                return Optional.of(nothing(message));
            case "java.lang.NumberFormatException":
                Matcher input = INPUT.matcher(message);
                return Optional.of(
                        input.find()
                                ? "`%s` can't be read as a number".formatted(input.group(1))
                                : "this text can't be read as a number");
            case "java.lang.NegativeArraySizeException":
                return Optional.of("an array can't have %s places".formatted(message));
            case "java.lang.UnsupportedOperationException":
                return message.isEmpty()
                        ? Optional.of(
                                "this list can't be changed; copy it first: `new ArrayList<>(list)`")
                        : Optional.empty();
            default:
                return bounds(message);
        }
    }

    private static String memory(String message, int heapMb) {
        if (message.contains("thread")) {
            return "the snippet started more threads than there is room for; start fewer";
        }
        return "this needs more memory than the bench has (%d MB); keep less at once"
                .formatted(heapMb);
    }

    private static String nothing(String message) {
        Matcher name = NULL_NAME.matcher(message);
        return name.find()
                ? "`%s` holds nothing (null); give it a value first".formatted(name.group(1))
                : "something here holds nothing (null); give it a value first";
    }

    private static Optional<String> bounds(String message) {
        Matcher bounds = OUT_OF_BOUNDS.matcher(message);
        if (!bounds.find()) {
            return Optional.empty();
        }
        long length = Long.parseLong(bounds.group(2));
        String there =
                length == 0
                        ? "there are none"
                        : "there are %d, counted from 0 to %d".formatted(length, length - 1);
        return Optional.of("place %s does not exist; %s".formatted(bounds.group(1), there));
    }

    private static String plain(ThrownException thrownException) {
        String simple = thrownException.className().replaceAll(".*[.$]", "");
        if (thrownException.message().isBlank()) {
            return "this failed with %s".formatted(simple);
        }
        boolean aSentence =
                thrownException.className().startsWith("java.lang.Illegal")
                        || thrownException.className().equals("java.lang.RuntimeException");
        return aSentence
                ? thrownException.message()
                : "this failed with %s: %s".formatted(simple, thrownException.message());
    }

    /** The exception's own message. */
    static String own(List<ThrownException> chain) {
        StringBuilder text = new StringBuilder();
        for (ThrownException one : chain) {
            text.append(text.length() == 0 ? "" : "\ncaused by ").append(one.className());
            text.append(one.message().isEmpty() ? "" : ": " + one.message());
        }
        return text.toString();
    }
}
