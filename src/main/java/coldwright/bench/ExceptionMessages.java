package coldwright.bench;

import coldwright.bench.remote.BenchMain;
import coldwright.bench.remote.ThrownException;
import coldwright.words.Words;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Messages for exceptions that a snippet threw, and for the ends of a bench's process. */
final class ExceptionMessages {
    private static final Words TEXTS = Words.of("bench");
    private static final Pattern OUT_OF_BOUNDS =
            Pattern.compile("[Ii]ndex (-?\\d+) out of bounds for length (\\d+)");
    private static final Pattern NULL_NAME =
            Pattern.compile("because \"(?:[^\"]*\\.)?([^\".]+)\" is null");
    private static final Pattern INPUT = Pattern.compile("For input string: \"([^\"]*)\"");
    private static final Set<String> WRAPPERS =
            Set.of(
                    "ExceptionInInitializerError",
                    "ExecutionException",
                    "InvocationTargetException");

    /** Unix adds the signal number to this to form the exit status. */
    private static final int SIGNAL = 128;

    private static final int KILL = SIGNAL + 9;
    private static final int TERMINATE = SIGNAL + 15;

    private ExceptionMessages() {}

    static String text(String key, Object... values) {
        return TEXTS.shown(key, values);
    }

    /**
     * A message for an exception, at most two sentences.
     *
     * @param chain the exception, then its causes
     * @param heapMb the bench's heap, MB
     */
    static String words(List<ThrownException> chain, int heapMb) {
        ThrownException first = chain.get(0);
        String name = simpleName(first);
        String message = first.message();
        String key = "thrown." + name;
        if (chain.size() > 1 && WRAPPERS.contains(name)) {
            return words(chain.subList(1, chain.size()), heapMb);
        }
        Matcher index = OUT_OF_BOUNDS.matcher(message);
        if (index.find()) {
            long length = Long.parseLong(index.group(2));
            return length == 0
                    ? text("index.none", index.group(1))
                    : text("index", index.group(1), length - 1);
        }
        return switch (name) {
            case "OutOfMemoryError" ->
                    message.contains("thread") ? text(key + ".thread") : text(key, heapMb);
            case "NullPointerException" -> found(NULL_NAME, message, key, ".name");
            case "NumberFormatException" -> found(INPUT, message, key, ".input");
            case "ArithmeticException" ->
                    message.equals("/ by zero") ? text(key) : plain(first, name);
            case "UnsupportedOperationException" ->
                    message.isEmpty() ? text(key) : plain(first, name);
            default ->
                    first.className().matches("(java|jdk)\\..*") && TEXTS.has(key)
                            ? text(key, message)
                            : plain(first, name);
        };
    }

    private static String found(Pattern pattern, String message, String key, String ending) {
        Matcher matcher = pattern.matcher(message);
        return matcher.find() ? text(key + ending, matcher.group(1)) : text(key);
    }

    private static String plain(ThrownException thrown, String name) {
        if (thrown.message().isBlank()) {
            return text("thrown.other", name);
        }
        boolean aSentence =
                thrown.className().startsWith("java.lang.Illegal")
                        || thrown.className().equals("java.lang.RuntimeException");
        return aSentence ? thrown.message() : text("thrown.other.message", name, thrown.message());
    }

    private static String simpleName(ThrownException thrown) {
        return thrown.className().replaceAll(".*[.$]", "");
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

    /** How the bench's process ended. */
    static String ended(boolean forged, OptionalInt status, IOException how) {
        if (forged) {
            return text("ended.forged");
        }
        if (status.isEmpty()) {
            return text("ended.lost", how.getMessage());
        }
        int code = status.getAsInt();
        if (code == BenchMain.TOO_MANY_THREADS) {
            return text("ended.threads");
        }
        if (code == KILL || code == TERMINATE) {
            return text("ended.outside");
        }
        return text(code > SIGNAL ? "ended.crash" : "ended.exit", code);
    }
}
