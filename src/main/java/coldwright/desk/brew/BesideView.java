package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.brew.model.Differences;
import coldwright.desk.brew.model.Glance;
import coldwright.desk.brew.model.Told;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.InvalidationListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All batches side by side: a small picture, a few sentences, and how each differs. */
final class BesideView extends VBox {
    private static final double CARD_EM = 22;

    private final BrewModel brew;
    private final ObservableValue<? extends Number> emPx;
    private final FlowPane cards = new FlowPane();
    private final InvalidationListener listener = value -> refresh();
    private final Set<BatchModel> heard = new HashSet<>();

    BesideView(BrewModel brew, ObservableValue<? extends Number> emPx) {
        this.brew = brew;
        this.emPx = emPx;
        getStyleClass().add("brew-part");
        cards.getStyleClass().add("brew-cards");
        getChildren().addAll(Fields.heading("batch.beside"), cards);
        brew.batches().addListener(listener);
        brew.open().addListener(listener);
        emPx.addListener(listener);
        refresh();
    }

    private void refresh() {
        for (BatchModel batch : brew.batches()) {
            if (heard.add(batch)) {
                batch.glance().addListener(listener);
                batch.figures().addListener(listener);
            }
        }
        heard.retainAll(brew.batches());
        boolean several = brew.batches().size() > 1;
        Words.show(this, several);
        cards.getChildren()
                .setAll(several ? brew.batches().stream().map(this::card).toList() : List.of());
    }

    private Node card(BatchModel batch) {
        VBox card = new VBox();
        card.getStyleClass().add("brew-card");
        card.setPrefWidth(CARD_EM * emPx.getValue().doubleValue());
        boolean here = batch.equals(brew.open().get());
        card.getChildren()
                .add(
                        Words.label(
                                Say.of("batch.beside.title", number(batch), name(batch)),
                                "brew-finding"));
        batch.glance().get().ifPresent(now -> tell(card, batch, now));
        if (here) {
            card.getStyleClass().add("here");
            card.getChildren().add(Words.label(Say.of("batch.beside.open"), "brew-why"));
        } else {
            differ(card, batch);
        }
        return card;
    }

    private void tell(VBox card, BatchModel batch, Glance now) {
        card.getChildren()
                .add(new SmallPicture(now, batch.figures().get(), emPx.getValue().doubleValue()));
        Told.beside(now).forEach(one -> card.getChildren().add(Words.label(one, "brew-fact")));
        batch.figures()
                .get()
                .ifPresent(
                        all ->
                                Told.beside(all)
                                        .forEach(
                                                one ->
                                                        card.getChildren()
                                                                .add(
                                                                        Words.label(
                                                                                one,
                                                                                "brew-fact"))));
    }

    private void differ(VBox card, BatchModel batch) {
        BatchModel open = brew.open().get();
        if (open == null) {
            return;
        }
        List<String> all =
                new ArrayList<>(Differences.between(open.recipe().get(), batch.recipe().get()));
        open.glance()
                .get()
                .ifPresent(
                        was ->
                                batch.glance()
                                        .get()
                                        .ifPresent(is -> all.addAll(Differences.between(was, is))));
        open.figures().get().ifPresent(was -> add(all, was, batch));
        card.getChildren()
                .add(
                        Words.label(
                                all.isEmpty()
                                        ? Say.of("batch.alike")
                                        : Say.of(
                                                "batch.beside.differs",
                                                number(open),
                                                String.join("; ", all)),
                                "brew-mend"));
    }

    private static void add(List<String> all, Reckoning was, BatchModel batch) {
        batch.figures().get().ifPresent(is -> all.addAll(Differences.between(was, is)));
    }

    private static String number(BatchModel batch) {
        return String.valueOf(batch.story().get().number());
    }

    private static String name(BatchModel batch) {
        return batch.recipe().get().name();
    }
}
