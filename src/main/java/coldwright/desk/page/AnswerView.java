package coldwright.desk.page;

import coldwright.desk.model.ForecastModel;
import coldwright.desk.prose.ProseView;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.function.Consumer;

/** After the run: what was said beside what is, and why. */
final class AnswerView extends VBox {
    private final ForecastModel model;
    private final Consumer<String> openLink;

    AnswerView(ForecastModel model, Consumer<String> openLink) {
        this.model = model;
        this.openLink = openLink;
        getStyleClass().add("answer");
        Words.shown(this, model.revealed());
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
                head(Say.of("answer.said")),
                Words.label(
                        Typography.of(model.said().orElse(Say.of("answer.nothing"))),
                        "beside-said"));
        beside.addRow(
                1,
                head(Say.of("answer.is")),
                Words.label(Typography.of(model.right()), "beside-right"));
        String verdict = model.distance().orElseGet(this::verdict);
        getChildren()
                .setAll(
                        Words.label(Typography.of(model.forecast().question()), "answer-question"),
                        beside,
                        Words.label(verdict, "verdict"),
                        new ProseView(model.forecast().explanation(), openLink));
    }

    private String verdict() {
        return switch (model.verdict()) {
            case RIGHT -> Say.of("answer.right");
            case OTHERWISE -> Say.of("answer.otherwise");
            case NOT_SAID -> Say.of("answer.not-said");
        };
    }

    /** A head that is never broken, however long what stands beside it. */
    private static Label head(String words) {
        Label head = Words.label(words, "beside-head");
        head.setMinWidth(Region.USE_PREF_SIZE);
        return head;
    }
}
