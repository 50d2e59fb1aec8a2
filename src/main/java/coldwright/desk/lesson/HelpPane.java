package coldwright.desk.lesson;

import coldwright.desk.code.CodeEditor;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.help.HelpEntry;
import coldwright.help.HelpIndex;
import coldwright.help.Suggestion;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Optional;

/** Help on the word under the caret, below the snippet. */
public final class HelpPane extends VBox {
    private static final int MOST_SHOWN = 3;

    private final SnippetModel model;
    private final CodeEditor editor;

    HelpPane(SnippetModel model, CodeEditor editor) {
        this.model = model;
        this.editor = editor;
        getStyleClass().add("help-pane");
        TextControls.show(this, false);
    }

    /** Shows help on the word under the caret, or closes it. */
    void turn() {
        if (isVisible()) {
            dismiss();
            return;
        }
        String text = editor.getText();
        int caret = editor.getCaretPosition();
        int start = startOfWord(text, caret);
        boolean ofSomething = start > 0 && text.charAt(start - 1) == '.';
        if (!ofSomething) {
            show(HelpIndex.ofThisProgram().at(text, caret, Optional.empty()));
            return;
        }
        String name = text.substring(start, endOfWord(text, start));
        model.suggest(text, start)
                .thenAccept(found -> Platform.runLater(() -> show(entries(found, name))));
    }

    private static List<HelpEntry> entries(List<Suggestion> found, String name) {
        return found.stream()
                .flatMap(one -> one.entry().stream())
                .filter(entry -> entry.name().equals(name))
                .flatMap(entry -> HelpIndex.ofThisProgram().of(entry.owner(), name).stream())
                .distinct()
                .toList();
    }

    private static int startOfWord(String text, int caret) {
        int start = Math.min(caret, text.length());
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static int endOfWord(String text, int start) {
        int end = start;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private void show(List<HelpEntry> entries) {
        getChildren().clear();
        if (entries.isEmpty()) {
            getChildren().add(TextControls.label(Messages.of("help.none"), "note"));
        }
        entries.stream().limit(MOST_SHOWN).forEach(this::add);
        getChildren().add(TextControls.command("dismiss", this::dismiss));
        TextControls.show(this, true);
        Platform.runLater(this::comeIntoView);
    }

    /** The button that was pressed for it, below it, stays in view too. */
    private void comeIntoView() {
        if (getScene() == null) {
            return;
        }
        getScene().getRoot().applyCss();
        getScene().getRoot().layout();
        LessonView.reveal(this, this);
        if (getScene().getFocusOwner() instanceof Button pressed) {
            LessonView.reveal(pressed, pressed);
        }
    }

    private void add(HelpEntry entry) {
        getChildren().add(TextControls.literal(entry.signature(), "help-signature"));
        if (!entry.sentence().isEmpty()) {
            getChildren().add(new CodeSentence(entry.sentence(), "help-sentence"));
        }
        entry.parameters()
                .forEach(line -> getChildren().add(new CodeSentence(line, "help-parameter")));
        if (!entry.returns().isEmpty()) {
            getChildren()
                    .add(
                            new CodeSentence(
                                    Messages.of("help.returns", entry.returns()),
                                    "help-parameter"));
        }
    }

    private void dismiss() {
        TextControls.show(this, false);
        editor.requestFocus();
    }

    /** Closes all open help within a page. Returns whether any was open. */
    public static boolean dismissWithin(Node page) {
        List<HelpPane> shown =
                page.lookupAll(".help-pane").stream()
                        .filter(HelpPane.class::isInstance)
                        .map(HelpPane.class::cast)
                        .filter(Node::isVisible)
                        .toList();
        boolean writing = page.getScene().getFocusOwner() instanceof CodeEditor;
        shown.forEach(one -> TextControls.show(one, false));
        if (!writing) {
            shown.stream().limit(1).forEach(HelpPane::dismiss);
        }
        return !shown.isEmpty();
    }
}
