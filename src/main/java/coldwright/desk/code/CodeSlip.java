package coldwright.desk.code;

import coldwright.bench.Problem;

import javafx.beans.property.StringProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;

import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;
import org.fxmisc.wellbehaved.event.EventPattern;
import org.fxmisc.wellbehaved.event.InputMap;
import org.fxmisc.wellbehaved.event.Nodes;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A slip of Java to write on: coloured, as high as its text, and with what is wrong marked where it
 * stands. Tab leaves it, so that nobody is caught in it who has only a keyboard.
 */
public final class CodeSlip extends CodeArea {
    private static final String WRONG = "wrong";
    private static final String WRONG_LINE = "wrong-line";
    private static final int MOST_COLOURED = 200_000;

    private final StringProperty text;
    private List<Problem> problems = List.of();

    /**
     * Makes a slip that shows and changes a text.
     *
     * @param text the Java text
     */
    public CodeSlip(StringProperty text) {
        this.text = text;
        getStyleClass().add("code-slip");
        setAutoHeight(true);
        setWrapText(true);
        setAccessibleRole(AccessibleRole.TEXT_AREA);
        replaceText(text.get());
        getUndoManager().forgetHistory();
        moveTo(0);
        colour();
        textProperty()
                .addListener(
                        (value, was, is) -> {
                            text.set(is);
                            problems = List.of();
                            colour();
                        });
        text.addListener((value, was, is) -> takeOver(is));
        Nodes.addInputMap(this, InputMap.ignore(EventPattern.keyPressed(KeyCode.TAB)));
        Nodes.addInputMap(
                this,
                InputMap.ignore(EventPattern.keyPressed(KeyCode.TAB, KeyCombination.SHIFT_DOWN)));
        addEventFilter(KeyEvent.KEY_PRESSED, this::keyPressed);
        addEventFilter(ScrollEvent.ANY, this::passOn);
    }

    private void takeOver(String is) {
        if (!is.equals(getText())) {
            replaceText(is);
        }
    }

    /**
     * Marks what is wrong; the marks go with the next change of the text.
     *
     * @param problems places in the text as it stands
     */
    public void mark(List<Problem> problems) {
        this.problems = List.copyOf(problems);
        colour();
    }

    /**
     * Puts the caret at a line's begin.
     *
     * @param line from 1
     */
    public void goToLine(int line) {
        moveTo(Math.max(0, Math.min(line, getParagraphs().size()) - 1), 0);
        requestFocus();
    }

    private void colour() {
        String java = getText();
        if (java.isEmpty() || java.length() > MOST_COLOURED) {
            return;
        }
        setStyleSpans(0, looks(java, JavaWords.in(java), problems));
        for (int line = 0; line < getParagraphs().size(); line++) {
            Collection<String> look = isWrong(line) ? List.of(WRONG_LINE) : List.of();
            if (!look.equals(getParagraph(line).getParagraphStyle())) {
                setParagraphStyle(line, look);
            }
        }
    }

    private boolean isWrong(int line) {
        return problems.stream().anyMatch(problem -> problem.line() == line + 1);
    }

    static StyleSpans<Collection<String>> looks(
            String java, List<Word> words, List<Problem> problems) {
        StyleSpansBuilder<Collection<String>> colours = new StyleSpansBuilder<>();
        int at = 0;
        for (Word word : words) {
            colours.add(List.of(), word.start() - at);
            colours.add(List.of(word.kind().look()), word.end() - word.start());
            at = word.end();
        }
        colours.add(List.of(), java.length() - at);
        StyleSpans<Collection<String>> all = colours.create();
        for (Problem problem : problems) {
            int start = Math.max(0, Math.min(problem.start(), java.length()));
            int end = Math.max(start, Math.min(problem.end(), java.length()));
            if (end > start) {
                all = all.overlay(marked(start, end, java.length()), CodeSlip::both);
            }
        }
        return all;
    }

    private static StyleSpans<Collection<String>> marked(int start, int end, int length) {
        StyleSpansBuilder<Collection<String>> mark = new StyleSpansBuilder<>();
        mark.add(List.of(), start);
        mark.add(List.of(WRONG), end - start);
        mark.add(List.of(), length - end);
        return mark.create();
    }

    private static Collection<String> both(Collection<String> one, Collection<String> other) {
        Set<String> all = new HashSet<>(one);
        all.addAll(other);
        return all;
    }

    private void keyPressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && !event.isShortcutDown() && !event.isAltDown()) {
            event.consume();
            replaceSelection("\n" + indentOfLine());
            requestFollowCaret();
        }
    }

    private String indentOfLine() {
        String line = getParagraph(getCurrentParagraph()).getText();
        String left = line.substring(0, Math.min(getCaretColumn(), line.length()));
        return left.substring(0, left.length() - left.stripLeading().length());
    }

    /** The page scrolls, not the slip. */
    private void passOn(ScrollEvent event) {
        Node parent = getParent();
        if (parent != null) {
            event.consume();
            parent.fireEvent(event.copyFor(parent, parent));
        }
    }

    /**
     * The text it shows and changes.
     *
     * @return the Java text
     */
    public StringProperty java() {
        return text;
    }
}
