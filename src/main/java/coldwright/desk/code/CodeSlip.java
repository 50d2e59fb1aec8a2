package coldwright.desk.code;

import coldwright.bench.Problem;
import coldwright.lesson.code.JavaWords;
import coldwright.lesson.code.Word;

import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.StringProperty;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.IndexRange;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.util.Duration;

import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;
import org.fxmisc.wellbehaved.event.EventPattern;
import org.fxmisc.wellbehaved.event.InputMap;
import org.fxmisc.wellbehaved.event.Nodes;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A slip of Java to write on: coloured, as high as its text, and with what is wrong marked where it
 * stands. Tab leaves it, so that nobody is caught in it who has only a keyboard.
 */
public final class CodeSlip extends CodeArea {
    private static final String INDENT = "    ";
    private static final String BRACKET = "bracket";
    private static final String WRONG = "wrong";
    private static final String WRONG_LINE = "wrong-line";
    private static final int MOST_COLOURED = 200_000;

    /** Room for rounding, so that a line that just fits does not wrap where it is shown. */
    private static final double SLACK_PX = 2;

    /** Names are offered by themselves when a point has stood for so long. */
    private static final Duration AFTER_POINT = Duration.millis(350);

    private final StringProperty text;
    private final Asking asking;
    private final PauseTransition afterPoint = new PauseTransition(AFTER_POINT);
    private Optional<Brackets.Pair> brackets = Optional.empty();
    private SuggestionList suggestions;

    /** Never shown: tells how high the text is when it is wrapped. */
    private final Text measure = new Text();

    private List<Problem> problems = List.of();
    private Measured measured;
    private double measuredHigh;

    /** What the height depends on. */
    private record Measured(String text, double width, Font font) {}

    /**
     * Makes a slip that shows and changes a text.
     *
     * @param text the Java text
     * @param asking knows which names may stand in it
     */
    public CodeSlip(StringProperty text, Asking asking) {
        this.text = text;
        this.asking = asking;
        getStyleClass().add("code-slip");
        measure.getStyleClass().add("text");
        TextFlow flow = new TextFlow(measure);
        flow.setManaged(false);
        flow.setVisible(false);
        getChildren().add(flow);
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
        text.addListener((value, was, is) -> takeOver(is));
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
        Measured asked = new Measured(getText(), inner, measure.getFont());
        if (!asked.equals(measured)) {
            measured = asked;
            measuredHigh = high(asked);
        }
        return Math.ceil(measuredHigh + room.getTop() + room.getBottom());
    }

    private double high(Measured asked) {
        double one = highWhenWrapped("x", asked.width());
        double high = 0;
        for (String line : asked.text().split("\n", -1)) {
            // the area sets the lines of a wrapped one a pixel apart
            double wrapped = highWhenWrapped(line, asked.width());
            high += wrapped + Math.round(wrapped / one) - 1;
        }
        return high;
    }

    private double highWhenWrapped(String line, double width) {
        measure.setText(line);
        return Math.ceil(measure.getParent().prefHeight(Math.max(1, width - SLACK_PX)));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    /** Only what differs is replaced, so that the caret stays and undo takes back just that. */
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
     * Marks what is wrong; the marks go with the next change of the text.
     *
     * @param problems places in the text as it stands
     */
    public void mark(List<Problem> problems) {
        if (!problems.equals(this.problems)) {
            this.problems = List.copyOf(problems);
            colour();
        }
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
        StyleSpans<Collection<String>> looks = looks(java, JavaWords.in(java), problems);
        if (brackets.isPresent() && brackets.get().close() < java.length()) {
            looks = looks.overlay(bracketed(brackets.get(), java.length()), CodeSlip::both);
        }
        setStyleSpans(0, looks);
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
            IndexRange place = placeOf(problem, java);
            if (place.getEnd() > place.getStart()) {
                all = all.overlay(marked(place, java.length()), CodeSlip::both);
            }
        }
        return all;
    }

    /** The place to underline; nothing if it is the whole line, which is tinted anyway. */
    private static IndexRange placeOf(Problem problem, String java) {
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
        mark.add(List.of(), place.getStart());
        mark.add(List.of(WRONG), place.getEnd() - place.getStart());
        mark.add(List.of(), length - place.getEnd());
        return mark.create();
    }

    private static StyleSpans<Collection<String>> bracketed(Brackets.Pair pair, int length) {
        StyleSpansBuilder<Collection<String>> mark = new StyleSpansBuilder<>();
        mark.add(List.of(), pair.open());
        mark.add(List.of(BRACKET), 1);
        mark.add(List.of(), pair.close() - pair.open() - 1);
        mark.add(List.of(BRACKET), 1);
        mark.add(List.of(), length - pair.close() - 1);
        return mark.create();
    }

    private static Collection<String> both(Collection<String> one, Collection<String> other) {
        Set<String> all = new HashSet<>(one);
        all.addAll(other);
        return all;
    }

    /** Offers the names that may stand at the caret. */
    public void suggest() {
        String asked = getText();
        int caret = getCaretPosition();
        asking.suggest(asked, caret)
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
            Optional<Brackets.Pair> now = Brackets.at(java, JavaWords.in(java), getCaretPosition());
            if (!now.equals(brackets)) {
                brackets = now;
                colour();
            }
        }
    }

    /** The size of its type, pixels. */
    double emPx() {
        return measure.getFont().getSize();
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
