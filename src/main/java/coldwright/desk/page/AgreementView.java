package coldwright.desk.page;

import coldwright.desk.model.Gate;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** Asks, before anything runs, whether the snippets of a stranger's lesson may run. */
final class AgreementView extends VBox {
    AgreementView(Gate gate, Runnable agree, Runnable whileWritten) {
        Button agreed = Words.button(Say.of("trust.agree"), agree);
        getStyleClass().add("agreement");
        getChildren()
                .addAll(
                        Words.label(Say.of("trust.head"), "agreement-head"),
                        new Sentence(Say.of("trust.what"), "agreement-what"),
                        new Sentence(Say.of("trust.once"), "agreement-what"),
                        agreed,
                        Words.button(Say.of("trust.author"), whileWritten));
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
