package coldwright.desk.lesson;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.OpenLessons;

import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/**
 * Asks whether snippets that want more than they may do confined may do everything. Shows that the
 * page follows a lesson's file while its author writes it.
 */
final class AgreementView extends VBox {
    private final Runnable focusPage;

    /** Asks; a pressed button disappears, so it focuses the page, or the focus would move far. */
    AgreementView(LessonModel model, OpenLessons lessons, Runnable focusPage) {
        this.focusPage = focusPage;
        Button agreed = button("trust.agree", () -> lessons.agree(model));
        VBox question =
                TextControls.styled(
                        new VBox(
                                TextControls.label(Messages.of("trust.head"), "agreement-head"),
                                new CodeSentence(Messages.of("trust.what"), "agreement-what"),
                                new CodeSentence(Messages.of("trust.once"), "agreement-what"),
                                agreed),
                        "agreement");
        if (model.isFollowed()) {
            question.getChildren()
                    .add(button("trust.author", () -> lessons.agreeWhileWritten(model)));
        }
        String file = LessonFaultsView.nameOf(model.lesson().file());
        VBox following =
                TextControls.styled(
                        new VBox(
                                new CodeSentence(
                                        Messages.of("writing.follows", file), "following-words"),
                                button("writing.end", () -> lessons.doneWriting(model))),
                        "following");
        ObservableBooleanValue asking = model.gate().asking();
        getChildren()
                .addAll(
                        TextControls.shown(question, asking),
                        TextControls.shown(following, model.written()));
        WhileShown.changes(
                this,
                () -> {
                    if (asking.get()) {
                        LessonView.reveal(question, this);
                        agreed.requestFocus();
                    }
                },
                asking);
    }

    private Button button(String key, Runnable action) {
        return TextControls.button(
                Messages.of(key),
                () -> {
                    focusPage.run();
                    action.run();
                });
    }
}
