package coldwright.lesson;

import static coldwright.lesson.FaultList.text;
import static coldwright.lesson.FaultList.unusable;

import coldwright.text.NearestWord;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The purpose of a fenced block, given by the words after its fence. */
enum BlockKind {
    JAVA("java"),
    JAVA_GIVEN("java given"),
    JAVA_SOLUTION("java solution"),
    PREDICTION("forecast"),
    /** Answered without a run. */
    QUESTION("question"),
    CHECK("check"),
    /** Only for the teacher. */
    TEACHER("teacher"),
    /** Shown unchanged. */
    PLAIN("text");

    private final String words;

    BlockKind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The kind with the words after a fence, plain text if there are none; empty if unknown. */
    static Optional<BlockKind> of(String info) {
        String tidy = tidy(info);
        return tidy.isEmpty()
                ? Optional.of(PLAIN)
                : Arrays.stream(values()).filter(word -> word.words.equals(tidy)).findFirst();
    }

    /** As {@link #of}; refuses unknown words. */
    static BlockKind named(String info) {
        List<String> known = Arrays.stream(values()).map(BlockKind::words).toList();
        return of(info).orElseThrow(
                        () ->
                                unusable(
                                        "block.unknown",
                                        tidy(info),
                                        NearestWord.to(tidy(info), known)
                                                .map(near -> text("near.block", near))
                                                .orElse(text("block.kinds"))));
    }

    private static String tidy(String info) {
        return info.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
