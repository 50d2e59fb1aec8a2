package coldwright.print;

import static coldwright.print.HtmlMarkup.text;

import java.util.ArrayList;
import java.util.List;

/** The sources in a handout, each once, numbered in order. */
final class SourceNotes {
    private final List<String> sources = new ArrayList<>();

    /** The reference number of a source. */
    String mark(String source) {
        String tidy = source.strip();
        int at = sources.indexOf(tidy);
        if (at < 0) {
            sources.add(tidy);
            at = sources.size() - 1;
        }
        return "\u00A0<sup><a href=\"#source-%s\">%s</a></sup>".formatted(at + 1, at + 1);
    }

    String html() {
        if (sources.isEmpty()) {
            return "";
        }
        StringBuilder html =
                new StringBuilder(
                        "<section class=\"sources\">\n<h2>%s</h2>\n<ol>\n"
                                .formatted(text("sources")));
        for (int i = 0; i < sources.size(); i++) {
            html.append(
                    "<li id=\"source-%s\">%s</li>\n"
                            .formatted(i + 1, HtmlMarkup.line(sources.get(i))));
        }
        return html.append("</ol>\n</section>\n").toString();
    }
}
