package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

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
 */
record LessonHeader(String track, String minutes, String needs) {
    static final LessonHeader NONE = new LessonHeader("", "", "");

    private static final List<String> KEYS = List.of("track", "minutes", "needs");
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
            if (!lines[i].isBlank()) {
                int line = lineInFile.applyAsInt(i);
                faultOf(lines[i].strip(), values).ifPresent(words -> faults.add(line, words));
            }
        }
        return new LessonHeader(
                values.getOrDefault("track", ""),
                values.getOrDefault("minutes", ""),
                values.getOrDefault("needs", ""));
    }

    /** Stores one entry; returns its error if it has one. */
    private static Optional<String> faultOf(String text, Map<String, String> values) {
        String key = keyOf(text);
        if (key.isEmpty()) {
            return Optional.of(text("head.unfit", text));
        }
        if (!KEYS.contains(key)) {
            return Optional.of(
                    text(
                            "head.unknown",
                            key,
                            NearestWord.to(key, KEYS)
                                    .map(near -> text("near", near))
                                    .orElse(text("head.keys"))));
        }
        String value = text.substring(text.indexOf(':') + 1).strip();
        return values.putIfAbsent(key, value) == null
                ? Optional.empty()
                : Optional.of(text("head.twice", key));
    }

    private static String keyOf(String text) {
        String key = text.substring(0, Math.max(0, text.indexOf(':'))).strip();
        return KEY.matcher(key).matches() ? key : "";
    }

    private static String inside(String comment) {
        return comment.replace("<!--", "").replace("-->", "");
    }
}
