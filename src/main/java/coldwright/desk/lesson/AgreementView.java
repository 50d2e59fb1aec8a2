package coldwright.desk.lesson;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.run.RunGate;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

import java.util.Optional;

/** Asks whether snippets that want more than they may do confined may do everything. */
final class AgreementView extends VBox {
    /**
     * Asks.
     *
     * @param gate what the snippets may do
     * @param agree allows the current text everything
     * @param whileWritten allows it however the file changes; empty if the file isn't watched
     */
    AgreementView(RunGate gate, Runnable agree, Optional<Runnable> whileWritten) {
        Button agreed = TextControls.button(Messages.of("trust.agree"), agree);
        getStyleClass().add("agreement");
        getChildren()
                .addAll(
                        TextControls.label(Messages.of("trust.head"), "agreement-head"),
                        new CodeSentence(Messages.of("trust.what"), "agreement-what"),
                        new CodeSentence(Messages.of("trust.once"), "agreement-what"),
                        agreed);
        whileWritten.ifPresent(
                written ->
                        getChildren()
                                .add(TextControls.button(Messages.of("trust.author"), written)));
        TextControls.shown(this, gate.asking());
        gate.asking()
                .addListener(
                        (value, was, is) -> {
                            if (is) {
                                LessonView.reveal(this, this);
                                agreed.requestFocus();
                            }
                        });
    }
}
