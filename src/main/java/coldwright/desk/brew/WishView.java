package coldwright.desk.brew;

import coldwright.desk.brew.model.Answer;
import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.brew.model.Offer;
import coldwright.desk.brew.model.Recipe;
import coldwright.desk.brew.model.Wishes;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

/** Words to wish with, and the smallest change that grants a wish. */
final class WishView extends VBox {
    private static final double USUAL_MINUTES = 40;

    private final BrewModel brew;
    private final Consumer<Recipe> taken;
    private final Map<Wishes, Button> words = new EnumMap<>(Wishes.class);
    private final TextField minutes = Fields.live(text -> refresh());
    private final VBox answers = new VBox();
    private final InvalidationListener listener = value -> refresh();
    private BatchModel batch;

    /**
     * Shows wishes.
     *
     * @param brew the batches
     * @param taken told the recipe from before a wish was taken
     */
    WishView(BrewModel brew, Consumer<Recipe> taken) {
        this.brew = brew;
        this.taken = taken;
        getStyleClass().add("brew-part");
        answers.getStyleClass().add("brew-part");
        minutes.setText(String.valueOf((int) USUAL_MINUTES));
        FlowPane choices = new FlowPane();
        choices.getStyleClass().add("brew-choices");
        for (Wishes wish : Wishes.values()) {
            Button button = Words.button("", () -> ask(wish));
            words.put(wish, button);
            choices.getChildren().add(button);
        }
        getChildren()
                .addAll(
                        Fields.heading("batch.wish"),
                        choices,
                        Fields.named("batch.wish.minutes", minutes, "min"),
                        answers);
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        if (batch != null) {
            batch.glance().removeListener(listener);
        }
        batch = is;
        batch.glance().addListener(listener);
        answers.getChildren().clear();
        refresh();
    }

    private double wanted() {
        try {
            double typed = Double.parseDouble(minutes.getText().strip());
            return typed >= 1 && typed <= 10_000 ? typed : USUAL_MINUTES;
        } catch (NumberFormatException e) {
            return USUAL_MINUTES;
        }
    }

    private void refresh() {
        if (batch != null) {
            batch.glance()
                    .get()
                    .ifPresent(
                            now ->
                                    words.forEach(
                                            (wish, button) -> {
                                                button.setText(
                                                        wish.words(
                                                                now.batch().freezerC(), wanted()));
                                                Words.show(button, wish.fits(now));
                                            }));
        }
    }

    private void ask(Wishes wish) {
        answers.getChildren().setAll(Words.label(Say.of("batch.wish.asking"), "brew-why"));
        BatchModel of = batch;
        Recipe recipe = batch.recipe().get();
        brew.ask(
                () -> wish.of(recipe, wanted()),
                answer -> {
                    if (of.equals(batch)) {
                        answered(answer, recipe);
                    }
                });
    }

    private void answered(Answer answer, Recipe was) {
        answers.getChildren().clear();
        if (!answer.said().isEmpty()) {
            answers.getChildren().add(Words.label(answer.said(), "brew-said-wish"));
        }
        for (Offer offer : answer.offers()) {
            answers.getChildren().add(offer(offer, answer.wish(), was));
        }
    }

    private Node offer(Offer offer, String wish, Recipe was) {
        VBox box = new VBox(Words.label(offer.words(), "brew-mend"));
        if (!offer.besides().isEmpty()) {
            box.getChildren()
                    .add(
                            Words.label(
                                    Say.of(
                                            "batch.wish.besides",
                                            String.join("; ", offer.besides())),
                                    "brew-why"));
        }
        Button take =
                Words.button(
                        Say.of("batch.take"),
                        () -> {
                            if (batch.recipe().get().equals(was)) {
                                batch.take(offer.recipe(), offer.words());
                                answers.getChildren()
                                        .setAll(
                                                Words.label(
                                                        Say.of("batch.taken"), "brew-said-wish"));
                                taken.accept(was);
                            } else {
                                answers.getChildren()
                                        .setAll(
                                                Words.label(
                                                        Say.of("batch.moved-on"), "brew-fault"));
                            }
                        });
        take.setAccessibleText(Say.of("batch.take") + ": " + offer.words());
        Button next =
                Words.button(
                        Say.of("batch.take-next"), () -> brew.next(batch, offer.recipe(), wish));
        FlowPane deeds = new FlowPane(take, next);
        deeds.getStyleClass().add("brew-choices");
        box.getChildren().add(deeds);
        box.getStyleClass().add("brew-offer");
        return box;
    }
}
