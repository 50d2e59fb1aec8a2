package coldwright.lesson;

import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

    /** A message in the language shown, for a fault or an exception. */
    static String text(String key, Object... values) {
        return Phrase.of("lesson", key, values).shown();
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
