package coldwright.desk.page;

import coldwright.desk.model.Gate;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

import java.util.Optional;

/** Asks, before anything runs, whether the snippets of a stranger's lesson may run. */
final class AgreementView extends VBox {
    /**
     * Asks.
     *
     * @param gate what runs pass through
     * @param agree lets them run as they are
     * @param whileWritten lets them run however the file is changed; empty if the page does not
     *     follow it
     */
    AgreementView(Gate gate, Runnable agree, Optional<Runnable> whileWritten) {
        Button agreed = Words.button(Say.of("trust.agree"), agree);
        getStyleClass().add("agreement");
        getChildren()
                .addAll(
                        Words.label(Say.of("trust.head"), "agreement-head"),
                        new Sentence(Say.of("trust.what"), "agreement-what"),
                        new Sentence(Say.of("trust.once"), "agreement-what"),
                        agreed);
        whileWritten.ifPresent(
                written -> getChildren().add(Words.button(Say.of("trust.author"), written)));
        Words.shown(this, gate.open().not());
        gate.triedInVain()
                .addListener(
                        (value, was, is) -> {
                            if (is) {
                                LessonView.reveal(this, this);
                                agreed.requestFocus();
                            }
                        });
    }
}
