package coldwright.desk.batch;

import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.search.BatchGoal;
import coldwright.desk.batch.search.BatchGoal.GoalResult;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

/** Goals to choose from, and the smallest change that reaches the chosen one. */
final class GoalView extends VBox {
    private static final double USUAL_MINUTES = 40;

    private final BatchesModel batches;
    private final Consumer<Recipe> taken;
    private final Map<BatchGoal, Button> words = new EnumMap<>(BatchGoal.class);
    private final TextField minutes = InputFields.live(text -> refresh());
    private final FlowPane choices = InputFields.choices();
    private final VBox answers = new VBox();
    private Subscription followed = Subscription.EMPTY;
    private BatchModel batch;

    /**
     * Shows goals.
     *
     * @param taken receives the recipe as it was before a change was applied
     */
    GoalView(BatchesModel brew, Consumer<Recipe> taken) {
        this.batches = brew;
        this.taken = taken;
        getStyleClass().add("brew-part");
        answers.getStyleClass().add("brew-part");
        minutes.setText(String.valueOf((int) USUAL_MINUTES));
        for (BatchGoal wish : BatchGoal.values()) {
            Button button = TextControls.button("", () -> ask(wish));
            words.put(wish, button);
            choices.getChildren().add(button);
        }
        getChildren()
                .addAll(
                        InputFields.heading("batch.wish"),
                        choices,
                        InputFields.named("batch.wish.minutes", minutes, "min"),
                        answers);
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        followed.unsubscribe();
        batch = is;
        followed = batch.preview().subscribe(this::refresh);
        choices.disableProperty().bind(batch.stale());
        answers.getChildren().clear();
        refresh();
    }

    /** Stops following the batch. */
    void close() {
        followed.unsubscribe();
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
            batch.preview()
                    .get()
                    .ifPresent(
                            now ->
                                    words.forEach(
                                            (wish, button) -> {
                                                button.setText(
                                                        wish.words(
                                                                now.batch().freezerC(), wanted()));
                                                TextControls.show(button, wish.fits(now));
                                            }));
        }
    }

    private void ask(BatchGoal wish) {
        answers.getChildren()
                .setAll(TextControls.label(Messages.of("batch.wish.asking"), "brew-why"));
        BatchModel of = batch;
        Recipe recipe = batch.recipe().get();
        batches.ask(
                () -> wish.of(recipe, wanted()),
                answer -> {
                    if (of.equals(batch)) {
                        answered(answer, recipe);
                    }
                });
    }

    private void answered(GoalResult answer, Recipe was) {
        answers.getChildren().clear();
        if (!answer.text().isEmpty()) {
            Node text = TextControls.label(answer.text(), "brew-said-wish");
            ProposedChangeView.belongsTo(text, batch, was);
            answers.getChildren().add(text);
        }
        for (ProposedChange change : answer.offers()) {
            answers.getChildren()
                    .add(
                            new ProposedChangeView(batch, was, change)
                                    .taking(() -> said(was))
                                    .making(batches, answer.goal()));
        }
    }

    private void said(Recipe was) {
        answers.getChildren()
                .setAll(TextControls.label(Messages.of("batch.taken"), "brew-said-wish"));
        taken.accept(was);
    }
}
