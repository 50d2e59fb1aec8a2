package coldwright.lesson;

import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects the faults in one file. */
final class FaultList {
    /** More faults than this help nobody; such a file is most likely not a lesson. */
    private static final int MOST = 100;

    /** Maximum length of a message, characters. */
    private static final int LONGEST = 400;

    private final String file;
    private final List<LessonFault> faults = new ArrayList<>();
    private int unnamed;

    FaultList(String file) {
        this.file = file;
    }

    /** A part of a lesson can't be used. */
    static final class Unusable extends RuntimeException {
        private static final long serialVersionUID = 1;

        private Unusable(String words) {
            super(words, null, false, false);
        }
    }

    /** A message in the language shown, for a fault or an exception. */
    static String text(String key, Object... values) {
        return Phrase.of("lesson", key, values).shown();
    }

    /** The reason why a part can't be used. */
    static Unusable unusable(String key, Object... values) {
        return new Unusable(text(key, values));
    }

    /** Refuses a part unless a condition is met. */
    static void require(boolean met, String key, Object... values) {
        if (!met) {
            throw unusable(key, values);
        }
    }

    /** Reads a part that begins on a line; if it can't be used, that is a fault. */
    <T> Optional<T> read(int line, Supplier<? extends T> part) {
        try {
            return Optional.of(part.get());
        } catch (Unusable e) {
            add(line, e.getMessage());
            return Optional.empty();
        }
    }

    void add(int line, String words) {
        if (faults.size() < MOST) {
            faults.add(new LessonFault(file, line, shown(words)));
        } else {
            unnamed++;
        }
    }

    /** A message safe to show, because its quotes from the file may contain anything. */
    private static String shown(String words) {
        String plain = words.replaceAll("\\p{Cntrl}", "\uFFFD");
        int half = LONGEST / 2;
        return plain.length() <= LONGEST
                ? plain
                : plain.substring(0, half) + " … " + plain.substring(plain.length() - half);
    }

    /** All faults by line; a last one counts those beyond the limit. */
    List<LessonFault> inOrder() {
        List<LessonFault> ordered = new ArrayList<>(faults);
        ordered.sort(Comparator.comparingInt(LessonFault::line));
        if (unnamed > 0) {
            ordered.add(new LessonFault(file, 0, text("more-faults", unnamed)));
        }
        return ordered;
    }
}
