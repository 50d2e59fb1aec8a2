package coldwright.desk.batch;

import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import javafx.util.Subscription;

import java.util.List;

/** All batches side by side: a thumbnail, a few sentences, and their differences. */
final class BatchComparisonView extends VBox {
    private static final double CARD_EM = 22;
    private static final double HEIGHT_EM = 5;
    private static final double BAR_EM = 1.6;

    private final BatchesModel batches;
    private final ObservableValue<? extends Number> emPx;
    private final FlowPane cards = new FlowPane();
    private final Subscription followed;
    private Subscription ofEach = Subscription.EMPTY;

    BatchComparisonView(BatchesModel brew, ObservableValue<? extends Number> emPx) {
        this.batches = brew;
        this.emPx = emPx;
        getStyleClass().add("brew-part");
        cards.getStyleClass().add("brew-cards");
        getChildren().addAll(InputFields.heading("batch.beside"), cards);
        followed =
                Subscription.combine(
                        brew.batches().subscribe(this::refresh),
                        brew.open().subscribe(this::refresh),
                        emPx.subscribe((Runnable) this::refresh));
        refresh();
    }

    /** Stops following the batches. */
    void close() {
        followed.unsubscribe();
        ofEach.unsubscribe();
    }

    void refresh() {
        ofEach.unsubscribe();
        ofEach = Subscription.EMPTY;
        for (BatchModel batch : batches.batches()) {
            ofEach = ofEach.and(batch.preview().subscribe(this::refresh));
            ofEach = ofEach.and(batch.figures().subscribe(this::refresh));
        }
        boolean several = batches.batches().size() > 1;
        TextControls.show(this, several);
        cards.getChildren()
                .setAll(several ? batches.batches().stream().map(this::card).toList() : List.of());
    }

    private Node card(BatchModel batch) {
        VBox card = new VBox();
        card.getStyleClass().add("brew-card");
        card.setPrefWidth(CARD_EM * emPx.getValue().doubleValue());
        boolean here = batch.equals(batches.open().get());
        InputFields.say(
                card,
                Messages.of("batch.beside.title", number(batch), name(batch)),
                "brew-finding");
        batch.report().ifPresent(report -> describe(card, report));
        if (here) {
            card.getStyleClass().add("here");
            InputFields.say(card, Messages.of("batch.beside.open"), "brew-why");
        } else {
            differ(card, batch);
        }
        return card;
    }

    private void describe(VBox card, BatchReport report) {
        card.getChildren().add(picture(report, emPx.getValue().doubleValue()));
        BatchSentences.beside(report).forEach(one -> InputFields.say(card, one, "brew-fact"));
    }

    /** The share of its water that is ice at serving, and its mean crystal to scale. */
    private static Node picture(BatchReport report, double em) {
        double ice = report.fact("serving_ice_percent_of_water").number();
        double height = HEIGHT_EM * em;
        double filled = ice / 100 * height;
        Pane picture =
                new Pane(
                        SmallShapes.as(new Rectangle(0, 0, BAR_EM * em, height), "small-bar"),
                        SmallShapes.as(
                                new Rectangle(0, height - filled, BAR_EM * em, filled),
                                "small-ice"));
        picture.setPrefSize((BAR_EM + 1.5 + 2 * SmallShapes.MOST_EM) * em, height);
        picture.setMinHeight(height);
        picture.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        picture.setAccessibleText(Messages.of("batch.beside.picture-bare", ice));
        report.find("tasted_mean_micrometres")
                .map(Fact::number)
                .ifPresent(
                        um -> {
                            double x = (BAR_EM + 1 + SmallShapes.MOST_EM) * em;
                            picture.getChildren()
                                    .addAll(SmallShapes.crystal(x, height / 2, um, em));
                            picture.setAccessibleText(Messages.of("batch.beside.picture", ice, um));
                        });
        return picture;
    }

    private void differ(VBox card, BatchModel batch) {
        BatchModel open = batches.open().get();
        if (open == null) {
            return;
        }
        List<String> all = BatchDifferences.between(open, batch);
        String words =
                all.isEmpty()
                        ? Messages.of("batch.alike")
                        : Messages.of("batch.beside.differs", number(open), String.join("; ", all));
        InputFields.say(card, words, "brew-mend");
    }

    private static String number(BatchModel batch) {
        return String.valueOf(batch.lineage().get().number());
    }

    private static String name(BatchModel batch) {
        return batch.shownRecipe().name();
    }
}
