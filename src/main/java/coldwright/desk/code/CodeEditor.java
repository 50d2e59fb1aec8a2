package coldwright.desk.code;

import coldwright.bench.SnippetProblem;
import coldwright.desk.layout.WhileShown;
import coldwright.source.JavaSource;

import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.StringProperty;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.util.Duration;

import org.fxmisc.richtext.CodeArea;
import org.fxmisc.wellbehaved.event.EventPattern;
import org.fxmisc.wellbehaved.event.InputMap;
import org.fxmisc.wellbehaved.event.Nodes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A Java editor: highlighted, as high as its text, with errors marked in place. Tab leaves it, so
 * that keyboard users aren't trapped.
 */
public final class CodeEditor extends CodeArea {
    private static final String INDENT = "    ";

    /** The style of the area for a line of no height. */
    private static final List<String> HIDDEN = List.of("collapse");

    private static final int MOST_COLOURED = 200_000;

    /** Delay after a typed point until names are offered. */
    private static final Duration AFTER_POINT = Duration.millis(350);

    private final NameSource nameSource;
    private final PauseTransition afterPoint = new PauseTransition(AFTER_POINT);
    private Optional<BracketMatcher.Pair> brackets = Optional.empty();
    private SuggestionList suggestions;

    private final WrappedHeight height = new WrappedHeight();
    private List<SnippetProblem> problems = List.of();
    private Set<Integer> hidden = Set.of();

    /**
     * Makes an editor that shows and changes a text.
     *
     * @param text the Java text
     * @param nameSource suggests names
     */
    public CodeEditor(StringProperty text, NameSource nameSource) {
        this.nameSource = nameSource;
        getStyleClass().add("code-editor");
        getChildren().add(height);
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
                            requestLayout();
                        });
        WhileShown.follow(this, () -> takeOver(text.get()), text);
        Nodes.addInputMap(this, InputMap.ignore(EventPattern.keyPressed(KeyCode.TAB)));
        Nodes.addInputMap(
                this,
                InputMap.ignore(EventPattern.keyPressed(KeyCode.TAB, KeyCombination.SHIFT_DOWN)));
        suggestions = new SuggestionList(this);
        addEventFilter(KeyEvent.KEY_PRESSED, this::keyPressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::keyTyped);
        afterPoint.setOnFinished(event -> suggest());
        caretPositionProperty().addListener(value -> matchBrackets());
        addEventFilter(ScrollEvent.ANY, this::passOn);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        Insets room = getInsets();
        double inner = (width < 0 ? getWidth() : width) - room.getLeft() - room.getRight();
        return Math.ceil(height.of(shownText(), inner) + room.getTop() + room.getBottom());
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    private String shownText() {
        String[] lines = getText().split("\n", -1);
        return IntStream.range(0, lines.length)
                .filter(line -> !hidden.contains(line))
                .mapToObj(line -> lines[line])
                .collect(Collectors.joining("\n"));
    }

    /**
     * Hides lines; they stay part of the text.
     *
     * @param lines from 0
     */
    public void hideLines(Set<Integer> lines) {
        if (!lines.equals(hidden)) {
            hidden = Set.copyOf(lines);
            colour();
            requestLayout();
        }
    }

    /** Replaces only the difference, so that the caret stays and undo reverts just that. */
    private void takeOver(String is) {
        String had = getText();
        if (!is.equals(had)) {
            int same = 0;
            int shorter = Math.min(had.length(), is.length());
            while (same < shorter && had.charAt(same) == is.charAt(same)) {
                same++;
            }
            int tail = 0;
            while (tail < shorter - same
                    && had.charAt(had.length() - 1 - tail) == is.charAt(is.length() - 1 - tail)) {
                tail++;
            }
            replaceText(same, had.length() - tail, is.substring(same, is.length() - tail));
        }
    }

    /**
     * Marks errors; the marks disappear with the next change of the text.
     *
     * @param problems errors at positions of the current text
     */
    public void mark(List<SnippetProblem> problems) {
        if (!problems.equals(this.problems)) {
            this.problems = List.copyOf(problems);
            colour();
        }
    }

    /**
     * Moves the caret to the start of a line.
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
        setStyleSpans(0, CodeHighlighting.of(java, problems, brackets));
        for (int line = 0; line < getParagraphs().size(); line++) {
            List<String> look =
                    hidden.contains(line) ? HIDDEN : CodeHighlighting.ofLine(line + 1, problems);
            if (!look.equals(getParagraph(line).getParagraphStyle())) {
                setParagraphStyle(line, look);
            }
        }
    }

    /** Offers names at the caret. */
    public void suggest() {
        String asked = getText();
        int caret = getCaretPosition();
        nameSource
                .suggest(asked, caret)
                .thenAccept(
                        found ->
                                Platform.runLater(
                                        () -> {
                                            boolean still =
                                                    getText().equals(asked)
                                                            && getCaretPosition() == caret;
                                            suggestions.show(still ? found : List.of());
                                        }));
    }

    private void keyTyped(KeyEvent event) {
        afterPoint.stop();
        if (event.getCharacter().equals(".")) {
            afterPoint.playFromStart();
        } else if (suggestions.isShowing()) {
            Platform.runLater(this::suggest);
        }
    }

    private void matchBrackets() {
        String java = getText();
        if (java.length() <= MOST_COLOURED) {
            Optional<BracketMatcher.Pair> now =
                    BracketMatcher.at(JavaSource.of(java), getCaretPosition());
            if (!now.equals(brackets)) {
                brackets = now;
                colour();
            }
        }
    }

    /** Type size, pixels. */
    double emPx() {
        return height.emPx();
    }

    private void keyPressed(KeyEvent event) {
        if (event.getCode() == KeyCode.SPACE && event.isControlDown()) {
            event.consume();
            suggest();
        } else if (event.getCode() == KeyCode.ENTER
                && !event.isShortcutDown()
                && !event.isAltDown()) {
            event.consume();
            replaceSelection("\n" + indentOfLine() + moreAfterOpening());
            requestFollowCaret();
        }
    }

    private String moreAfterOpening() {
        String line = getParagraph(getCurrentParagraph()).getText();
        String left = line.substring(0, Math.min(getCaretColumn(), line.length())).stripTrailing();
        return left.endsWith("{") || left.endsWith("(") ? INDENT : "";
    }

    private String indentOfLine() {
        String line = getParagraph(getCurrentParagraph()).getText();
        String left = line.substring(0, Math.min(getCaretColumn(), line.length()));
        return left.substring(0, left.length() - left.stripLeading().length());
    }

    /** Scrolls the page, not the editor. */
    private void passOn(ScrollEvent event) {
        Node parent = getParent();
        if (parent != null) {
            event.consume();
            parent.fireEvent(event.copyFor(parent, parent));
        }
    }
}
