package coldwright.print;

import coldwright.source.JavaHighlight;

import java.util.List;
import java.util.Locale;

/** Java text on paper: syntax colours and hanging indents for lines that are too long. */
final class CodeListing {
    /** Characters of extra indent. */
    private static final int HANGING = 4;

    /** The width of a Mononoki character at size 1 (the font's own advance). */
    private static final double LETTER_EMS = 0.562;

    private final StringBuilder html = new StringBuilder("<pre class=\"java\"><code>");
    private final String java;
    private final List<JavaHighlight> words;

    /** The first word that ends after the start of the current line. */
    private int next;

    private CodeListing(String java) {
        this.java = java;
        this.words = JavaHighlight.in(java);
    }

    static String html(String java) {
        CodeListing lines = new CodeListing(java);
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
            JavaHighlight word = words.get(i);
            int start = Math.max(from, word.start());
            int stop = Math.min(end, word.end());
            if (start < stop) {
                html.append(HtmlMarkup.escaped(java.substring(at, start)))
                        .append("<span class=\"%s\">".formatted(word.kind().look()))
                        .append(HtmlMarkup.escaped(java.substring(start, stop)))
                        .append("</span>");
                at = stop;
            }
            next = word.end() <= end ? i + 1 : i;
        }
        String rest = java.substring(at, end);
        html.append(line.isEmpty() ? "\u00A0" : HtmlMarkup.escaped(rest)).append("</span>");
    }
}
