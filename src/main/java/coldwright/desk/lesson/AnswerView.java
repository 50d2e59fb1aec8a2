package coldwright.desk.lesson;

import coldwright.desk.glossary.TermFinder;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.prose.ProseView;
import coldwright.lesson.ExpectedAnswer;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.List;
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
        WhileShown.follow(this, this::reveal, model.revealed());
    }

    private void reveal() {
        if (!model.revealed().get()) {
            return;
        }
        GridPane beside = TextControls.styled(new GridPane(), "beside");
        beside.addRow(
                0,
                head(Messages.of(model.withoutRun() ? "question.said" : "answer.predicted")),
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
        getChildren().addAll(3, reasons());
    }

    /** The reason or belief behind each choice that has one. */
    private List<Node> reasons() {
        List<Node> lines = new ArrayList<>();
        if (model.prediction().answer() instanceof ExpectedAnswer.Several several) {
            for (int i = 0; i < several.choices().size(); i++) {
                if (!several.reasons().get(i).isEmpty()) {
                    String line = several.choices().get(i) + " – " + several.reasons().get(i);
                    lines.add(TextControls.label(line, "question-reason"));
                }
            }
        }
        return lines;
    }

    private String verdict() {
        if (model.withoutRun()) {
            return Messages.of("question." + model.verdict().word());
        }
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
