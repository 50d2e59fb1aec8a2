package coldwright.desk.lesson;

import coldwright.desk.glossary.TermFinder;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.prose.ProseView;

import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.function.Consumer;

/** After the run: the learner's answer, the right one, and why. */
final class AnswerView extends VBox {
    private final PredictionModel model;
    private final Consumer<String> openLink;

    AnswerView(PredictionModel model, Consumer<String> openLink) {
        this.model = model;
        this.openLink = openLink;
        getStyleClass().add("answer");
        TextControls.shown(this, model.revealed());
        model.revealed().addListener((value, was, is) -> reveal());
        if (model.revealed().get()) {
            reveal();
        }
    }

    private void reveal() {
        GridPane beside = new GridPane();
        beside.getStyleClass().add("beside");
        beside.addRow(
                0,
                head(Messages.of("answer.predicted")),
                TextControls.label(
                        model.answerText().orElse(Messages.of("answer.nothing")), "beside-said"));
        beside.addRow(
                1,
                head(Messages.of("answer.is")),
                TextControls.label(model.right(), "beside-right"));
        String verdict = model.distance().orElseGet(this::verdict);
        getChildren()
                .setAll(
                        TextControls.label(model.prediction().question(), "answer-question"),
                        beside,
                        TextControls.label(verdict, "verdict"),
                        new ProseView(
                                model.prediction().explanation(), openLink, new TermFinder()));
    }

    private String verdict() {
        return switch (model.verdict()) {
            case YES -> Messages.of("answer.right");
            case NO -> Messages.of("answer.wrong");
            case OPEN -> Messages.of("answer.none");
        };
    }

    /** A heading that never wraps, however long the text beside it is. */
    private static Label head(String words) {
        Label head = TextControls.label(words, "beside-head");
        head.setMinWidth(Region.USE_PREF_SIZE);
        return head;
    }
}
