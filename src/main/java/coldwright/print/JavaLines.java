package coldwright.print;

import coldwright.lesson.code.JavaWords;
import coldwright.lesson.code.Word;

import java.util.List;
import java.util.Locale;

/**
 * Java text on paper: its words coloured, a line for each line; what does not fit goes on below,
 * further in than the line began.
 */
final class JavaLines {
    /** How far further in, in letters. */
    private static final int HANGING = 4;

    /** The width of a Mononoki letter, in its size (the font's own advance). */
    private static final double LETTER_EMS = 0.562;

    private final StringBuilder html = new StringBuilder("<pre class=\"java\"><code>");
    private final String java;
    private final List<Word> words;

    /** The first word that does not end before the line being set. */
    private int next;

    private JavaLines(String java) {
        this.java = java;
        this.words = JavaWords.in(java);
    }

    static String html(String java) {
        JavaLines lines = new JavaLines(java);
        int at = 0;
        for (String line : java.split("\n", -1)) {
            lines.line(at, line);
            at += line.length() + 1;
        }
        return lines.html.append("</code></pre>\n").toString();
    }

    private void line(int from, String line) {
        int end = from + line.length();
        int in = line.length() - line.stripLeading().length() + HANGING;
        String ems = String.format(Locale.ROOT, "%.2fem", in * LETTER_EMS);
        html.append(
                "<span class=\"line\" style=\"padding-left: %s; text-indent: -%s\">"
                        .formatted(ems, ems));
        int at = from;
        for (int i = next; i < words.size() && words.get(i).start() < end; i++) {
            Word word = words.get(i);
            int start = Math.max(from, word.start());
            int stop = Math.min(end, word.end());
            if (start < stop) {
                html.append(Markup.escaped(java.substring(at, start)))
                        .append("<span class=\"%s\">".formatted(word.kind().look()))
                        .append(Markup.escaped(java.substring(start, stop)))
                        .append("</span>");
                at = stop;
            }
            next = word.end() <= end ? i + 1 : i;
        }
        String rest = java.substring(at, end);
        html.append(line.isEmpty() ? "\u00A0" : Markup.escaped(rest)).append("</span>");
    }
}
