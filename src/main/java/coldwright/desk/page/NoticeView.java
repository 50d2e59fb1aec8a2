package coldwright.desk.page;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;

/** The notice at the foot of the window, until it is dismissed. */
final class NoticeView extends HBox {
    NoticeView(DeskModel desk) {
        StackPane words = new StackPane();
        HBox.setHgrow(words, Priority.ALWAYS);
        desk.notice()
                .addListener(
                        (value, was, is) ->
                                words.getChildren().setAll(new CodeSentence(is, "notice-words")));
        getChildren()
                .addAll(words, TextControls.button(Messages.of("dismiss"), desk::dismissNotice));
        setAlignment(Pos.BASELINE_LEFT);
        getStyleClass().add("notice");
        TextControls.shown(this, desk.notice().isNotEmpty());
    }
}
