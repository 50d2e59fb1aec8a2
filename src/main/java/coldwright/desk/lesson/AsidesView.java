package coldwright.desk.lesson;

import coldwright.desk.code.CodeEditor;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.lesson.Aside;

import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Under an editor, a button for each of its asides opens the folded lines and closes them. */
final class AsidesView extends FlowPane {
    private final CodeEditor editor;
    private final Set<String> opened = new HashSet<>();
    private List<Aside> asides = List.of();
    private boolean folding;

    AsidesView(CodeEditor editor) {
        this.editor = editor;
        getStyleClass().add("snippet-buttons");
        editor.textProperty().addListener(text -> refresh());
        editor.caretPositionProperty().addListener(position -> openAtCaret());
    }

    /** Folds the asides, or shows all lines. */
    void fold(boolean on) {
        folding = on;
        refresh();
    }

    private void refresh() {
        asides = folding ? Aside.in(editor.getText()) : List.of();
        getChildren().setAll(asides.stream().map(this::button).toList());
        TextControls.show(this, !asides.isEmpty());
        editor.hideLines(
                asides.stream()
                        .filter(aside -> !opened.contains(aside.words()))
                        .flatMapToInt(one -> IntStream.rangeClosed(one.firstLine(), one.lastLine()))
                        .boxed()
                        .collect(Collectors.toSet()));
    }

    private ToggleButton button(Aside aside) {
        ToggleButton button =
                new ToggleButton(Messages.of("snippet.aside", aside.words(), aside.size()));
        button.getStyleClass().setAll("word", "quiet-word");
        button.setSelected(opened.contains(aside.words()));
        button.setOnAction(
                event -> {
                    int index = getChildren().indexOf(button);
                    if (!opened.remove(aside.words())) {
                        opened.add(aside.words());
                    }
                    refresh();
                    getChildren().get(index).requestFocus();
                });
        return button;
    }

    /** A caret that moves into folded lines, from the keys or an error, opens them. */
    private void openAtCaret() {
        int line = editor.getCurrentParagraph();
        asides.stream()
                .filter(one -> line >= one.firstLine() && line <= one.lastLine())
                .filter(one -> editor.isFocused() && opened.add(one.words()))
                .findFirst()
                .ifPresent(one -> refresh());
    }
}
