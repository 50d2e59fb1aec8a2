package coldwright.lesson;

import static coldwright.lesson.FaultList.require;
import static coldwright.lesson.FaultList.text;
import static coldwright.lesson.FaultList.unusable;

import coldwright.text.NearestWord;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.regex.Pattern;

/**
 * The {@code key: value} lines in the comment under a lesson's title.
 *
 * @param track the lesson's part of the course; may be empty
 * @param minutes its duration; may be empty
 * @param needs things that the learner needs; may be empty
 * @param asks what its snippets need beyond what lessons may do; may be empty
 */
record LessonHeader(String track, String minutes, String needs, String asks) {
    static final LessonHeader NONE = new LessonHeader("", "", "", "");

    private static final List<String> KEYS = List.of("track", "minutes", "needs", "asks");
    private static final Pattern KEY = Pattern.compile("\\p{L}[\\p{L} _-]*");

    /** Whether a comment before the first step is the header. */
    static boolean isMeant(String comment, boolean directlyUnderTitle) {
        return inside(comment)
                .lines()
                .map(LessonHeader::keyOf)
                .anyMatch(key -> directlyUnderTitle ? !key.isEmpty() : KEYS.contains(key));
    }

    static LessonHeader read(String comment, IntUnaryOperator lineInFile, FaultList faults) {
        Map<String, String> values = new HashMap<>();
        String[] lines = inside(comment).split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (!line.isEmpty()) {
                faults.read(lineInFile.applyAsInt(i), () -> take(line, values));
            }
        }
        return new LessonHeader(
                values.getOrDefault("track", ""),
                values.getOrDefault("minutes", ""),
                values.getOrDefault("needs", ""),
                values.getOrDefault("asks", ""));
    }

    /** Stores one entry and returns its value; refuses one that isn't valid. */
    private static String take(String line, Map<String, String> values) {
        String key = keyOf(line);
        require(!key.isEmpty(), "head.unfit", line);
        if (!KEYS.contains(key)) {
            Optional<String> near = NearestWord.to(key, KEYS);
            throw unusable(
                    "head.unknown",
                    key,
                    near.map(word -> text("near", word)).orElse(text("head.keys")));
        }
        String value = line.substring(line.indexOf(':') + 1).strip();
        boolean asks = value.equals("everything") || AskedFile.isMeantBy(value);
        require(asks || !key.equals("asks"), "head.asks", value);
        require(values.putIfAbsent(key, value) == null, "head.twice", key);
        return value;
    }

    private static String keyOf(String text) {
        String key = text.substring(0, Math.max(0, text.indexOf(':'))).strip();
        return KEY.matcher(key).matches() ? key : "";
    }

    private static String inside(String comment) {
        return comment.replace("<!--", "").replace("-->", "");
    }
}
