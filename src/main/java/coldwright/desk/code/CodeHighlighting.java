package coldwright.desk.code;

import coldwright.bench.SnippetProblem;
import coldwright.source.JavaHighlight;

import javafx.scene.control.IndexRange;

import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Style classes of Java text: token colours, errors, and a pair of brackets. */
final class CodeHighlighting {
    private static final List<String> PLAIN = List.of();
    private static final List<String> WRONG = List.of("wrong");
    private static final List<String> WRONG_LINE = List.of("wrong-line");
    private static final List<String> BRACKET = List.of("bracket");

    private CodeHighlighting() {}

    /**
     * The styles of a whole text.
     *
     * @param java the text, not empty
     * @param problems its errors; positions beyond the end are moved to the end
     * @param brackets the pair to show; none if the text has become too short for it
     * @return a style for each character
     */
    static StyleSpans<Collection<String>> of(
            String java, List<SnippetProblem> problems, Optional<BracketMatcher.Pair> brackets) {
        StyleSpans<Collection<String>> all = words(java);
        for (SnippetProblem problem : problems) {
            IndexRange place = placeOf(problem, java);
            if (place.getEnd() > place.getStart()) {
                all = all.overlay(marked(place, java.length()), CodeHighlighting::both);
            }
        }
        if (brackets.isPresent() && brackets.get().close() < java.length()) {
            all = all.overlay(bracketed(brackets.get(), java.length()), CodeHighlighting::both);
        }
        return all;
    }

    /**
     * The style of a line.
     *
     * @param line from 1
     * @param problems the errors of the text
     * @return tinted if the line has an error
     */
    static List<String> ofLine(int line, List<SnippetProblem> problems) {
        return problems.stream().anyMatch(problem -> problem.line() == line) ? WRONG_LINE : PLAIN;
    }

    private static StyleSpans<Collection<String>> words(String java) {
        StyleSpansBuilder<Collection<String>> colours = new StyleSpansBuilder<>();
        int at = 0;
        for (JavaHighlight word : JavaHighlight.in(java)) {
            colours.add(PLAIN, word.start() - at);
            colours.add(List.of(word.kind().look()), word.end() - word.start());
            at = word.end();
        }
        colours.add(PLAIN, java.length() - at);
        return colours.create();
    }

    /** The range to underline; empty if it is the whole line, which is tinted anyway. */
    private static IndexRange placeOf(SnippetProblem problem, String java) {
        int start = Math.max(0, Math.min(problem.start(), java.length()));
        int end = Math.max(start, Math.min(problem.end(), java.length()));
        while (start < end && Character.isWhitespace(java.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(java.charAt(end - 1))) {
            end--;
        }
        boolean fromLineStart = java.substring(0, start).lastIndexOf('\n') + 1 >= start;
        boolean toLineEnd = end == java.length() || java.charAt(end) == '\n';
        boolean whole = fromLineStart && toLineEnd || java.substring(start, end).contains("\n");
        return new IndexRange(start, whole ? start : end);
    }

    private static StyleSpans<Collection<String>> marked(IndexRange place, int length) {
        StyleSpansBuilder<Collection<String>> mark = new StyleSpansBuilder<>();
        mark.add(PLAIN, place.getStart());
        mark.add(WRONG, place.getEnd() - place.getStart());
        mark.add(PLAIN, length - place.getEnd());
        return mark.create();
    }

    private static StyleSpans<Collection<String>> bracketed(BracketMatcher.Pair pair, int length) {
        StyleSpansBuilder<Collection<String>> mark = new StyleSpansBuilder<>();
        mark.add(PLAIN, pair.open());
        mark.add(BRACKET, 1);
        mark.add(PLAIN, pair.close() - pair.open() - 1);
        mark.add(BRACKET, 1);
        mark.add(PLAIN, length - pair.close() - 1);
        return mark.create();
    }

    private static Collection<String> both(Collection<String> one, Collection<String> other) {
        Set<String> all = new HashSet<>(one);
        all.addAll(other);
        return all;
    }
}
