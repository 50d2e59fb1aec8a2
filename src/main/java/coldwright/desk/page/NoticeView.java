package coldwright.desk.page;

import coldwright.desk.model.DeskModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;

/** What there is to tell the learner, at the foot of the window, until it is put away. */
final class NoticeView extends HBox {
    NoticeView(DeskModel desk) {
        StackPane words = new StackPane();
        HBox.setHgrow(words, Priority.ALWAYS);
        desk.notice()
                .addListener(
                        (value, was, is) ->
                                words.getChildren().setAll(new Sentence(is, "notice-words")));
        getChildren().addAll(words, Words.button(Say.of("put-away"), desk::dismissNotice));
        setAlignment(Pos.BASELINE_LEFT);
        getStyleClass().add("notice");
        Words.shown(this, desk.notice().isNotEmpty());
    }
}
