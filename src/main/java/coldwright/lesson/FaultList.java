package coldwright.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The faults found so far in one file. */
final class FaultList {
    /** More than this many help nobody; a file with more is most likely no lesson at all. */
    private static final int MOST = 100;

    /** Longest sentence, characters. */
    private static final int LONGEST = 400;

    private final String file;
    private final List<LessonFault> faults = new ArrayList<>();
    private int unnamed;

    FaultList(String file) {
        this.file = file;
    }

    void add(int line, String words) {
        if (faults.size() < MOST) {
            faults.add(new LessonFault(file, line, shown(words)));
        } else {
            unnamed++;
        }
    }

    /** Words fit to be shown: what they quote from the file may hold anything. */
    private static String shown(String words) {
        String plain = words.replaceAll("\\p{Cntrl}", "\uFFFD");
        int half = LONGEST / 2;
        return plain.length() <= LONGEST
                ? plain
                : plain.substring(0, half) + " … " + plain.substring(plain.length() - half);
    }

    /** All of them by line, and a last one that counts those beyond the limit. */
    List<LessonFault> inOrder() {
        List<LessonFault> ordered = new ArrayList<>(faults);
        ordered.sort(Comparator.comparingInt(LessonFault::line));
        if (unnamed > 0) {
            ordered.add(
                    new LessonFault(
                            file,
                            0,
                            "%,d more faults are not listed; mend these first".formatted(unnamed)));
        }
        return ordered;
    }
}
