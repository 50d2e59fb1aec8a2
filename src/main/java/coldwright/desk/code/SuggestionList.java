package coldwright.desk.code;

import coldwright.help.Suggestion;

import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;

import java.util.List;

/** A list of suggested names beside the caret. */
final class SuggestionList {
    private static final int ROWS_SHOWN = 8;
    private static final double ROW_EM = 2.3;
    private static final double WIDTH_EM = 30;

    private final CodeEditor editor;
    private final Popup popup = new Popup();
    private final ListView<Suggestion> list = new ListView<>();
    private final Label help = new Label();
    private final VBox box = new VBox(list, help);

    SuggestionList(CodeEditor slip) {
        this.editor = slip;
        list.getStyleClass().add("suggestions");
        list.setFocusTraversable(false);
        list.setCellFactory(view -> new SuggestionRow());
        list.setAccessibleRole(AccessibleRole.LIST_VIEW);
        help.setWrapText(true);
        help.getStyleClass().add("suggestion-help");
        box.getStyleClass().add("suggestion-box");
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener((value, was, is) -> help.setText(is == null ? "" : is.help()));
        list.setOnMouseClicked(event -> take());
        popup.setAutoHide(true);
        popup.getContent().add(box);
        slip.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        slip.focusedProperty().addListener(value -> popup.hide());
    }

    /** Shows names; an empty list hides it. */
    void show(List<Suggestion> suggestions) {
        if (suggestions.isEmpty() || !editor.isFocused() || editor.getCaretBounds().isEmpty()) {
            popup.hide();
            return;
        }
        Parent root = editor.getScene().getRoot();
        box.getStylesheets().setAll(root.getStylesheets());
        box.getStyleClass().setAll("suggestion-box");
        box.getStyleClass().addAll(root.getStyleClass());
        box.setStyle(root.getStyle());
        double em = editor.emPx();
        list.getItems().setAll(suggestions);
        list.setPrefSize(WIDTH_EM * em, ROW_EM * em * Math.min(ROWS_SHOWN, suggestions.size()) + 4);
        help.setMaxWidth(WIDTH_EM * em);
        list.getSelectionModel().select(0);
        list.scrollTo(0);
        Bounds caret = editor.getCaretBounds().get();
        popup.show(editor, caret.getMinX(), caret.getMaxY() + 2);
    }

    boolean isShowing() {
        return popup.isShowing();
    }

    private void pressed(KeyEvent event) {
        if (!popup.isShowing()) {
            return;
        }
        int at = list.getSelectionModel().getSelectedIndex();
        switch (event.getCode()) {
            case UP -> select(at - 1);
            case DOWN -> select(at + 1);
            case PAGE_UP -> select(Math.max(0, at - ROWS_SHOWN));
            case PAGE_DOWN -> select(Math.min(list.getItems().size() - 1, at + ROWS_SHOWN));
            case ENTER, TAB -> take();
            case ESCAPE -> popup.hide();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void select(int index) {
        if (index >= 0 && index < list.getItems().size()) {
            list.getSelectionModel().select(index);
            list.scrollTo(Math.max(0, index - ROWS_SHOWN / 2));
        }
    }

    private void take() {
        Suggestion chosen = list.getSelectionModel().getSelectedItem();
        popup.hide();
        if (chosen != null && chosen.from() <= editor.getCaretPosition()) {
            editor.replaceText(chosen.from(), editor.getCaretPosition(), chosen.insert());
        }
    }

    private static final class SuggestionRow extends ListCell<Suggestion> {
        @Override
        protected void updateItem(Suggestion is, boolean empty) {
            super.updateItem(is, empty);
            setText(empty || is == null ? "" : is.label());
            setAccessibleText(empty || is == null ? "" : is.label() + ". " + is.help());
        }
    }
}
