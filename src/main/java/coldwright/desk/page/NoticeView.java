package coldwright.desk.page;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;

/**
 * What is going on, and the notice until it is dismissed. It is shown over the foot of the page, so
 * that nothing on the page moves.
 */
final class NoticeView extends VBox {
    private final Subscription subscription;

    NoticeView(DeskModel desk) {
        Label busy = TextControls.label("", "busy");
        busy.textProperty().bind(desk.busy());
        TextControls.shown(busy, desk.busy().isNotEmpty());
        StackPane words = new StackPane();
        HBox.setHgrow(words, Priority.ALWAYS);
        subscription =
                desk.notice()
                        .subscribe(
                                is ->
                                        words.getChildren()
                                                .setAll(new CodeSentence(is, "notice-words")));
        HBox notice =
                TextControls.row(
                        "notice", words, TextControls.command("dismiss", desk::dismissNotice));
        getChildren().addAll(busy, TextControls.shown(notice, desk.notice().isNotEmpty()));
        setMaxHeight(USE_PREF_SIZE);
        setPickOnBounds(false);
        StackPane.setAlignment(this, Pos.BOTTOM_LEFT);
    }

    void close() {
        subscription.unsubscribe();
    }
}
