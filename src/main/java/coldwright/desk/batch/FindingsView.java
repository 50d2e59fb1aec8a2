package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.diagnosis.Finding;

import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.util.List;
import java.util.function.Consumer;

/** Findings in plain words, and up to three plans that resolve them. */
final class FindingsView extends VBox {
    /** Plans are made only when typing pauses, so that typing stays quick. */
    private static final Duration REST = Duration.millis(250);

    private final BatchesModel batches;
    private final Consumer<Recipe> taken;
    private final VBox plans = new VBox();
    private final PauseTransition rest = new PauseTransition(REST);
    private BatchModel batch;
    private BatchAnalysis shown;

    /**
     * Shows findings.
     *
     * @param taken receives the recipe as it was before a plan was taken
     */
    FindingsView(BatchesModel brew, Consumer<Recipe> taken) {
        this.batches = brew;
        this.taken = taken;
        getStyleClass().add("brew-findings");
        rest.setOnFinished(event -> ask());
    }

    /** Makes the next call of {@link #show} write all again, in other units. */
    void forget() {
        shown = null;
    }

    /** Shows what to expect of a batch, and makes plans a moment later. */
    void show(BatchModel of, BatchAnalysis all) {
        if (all.equals(shown) && of.equals(batch)) {
            return;
        }
        batch = of;
        shown = all;
        getChildren().clear();
        InputFields.say(this, BatchSentences.judged(all), "brew-why");
        if (all.report().findings().isEmpty()) {
            getChildren().add(TextControls.label(BatchReport.NO_FINDINGS.shown(), "brew-finding"));
        }
        all.report().findings().forEach(one -> getChildren().add(findingBox(one)));
        getChildren().add(plans);
        plans.getChildren().clear();
        rest.playFromStart();
    }

    private static Node findingBox(Finding finding) {
        List<String> told = BatchSentences.finding(finding);
        return new VBox(
                TextControls.label(told.get(0), "brew-finding"),
                TextControls.label(told.get(1), "brew-why"));
    }

    private void ask() {
        BatchModel of = batch;
        BatchAnalysis all = shown;
        Recipe recipe = of.recipe().get();
        if (of.figuresAreOfNow() && !all.report().findings().isEmpty()) {
            batches.ask(
                    () -> ProposedChange.of(all),
                    found -> {
                        if (all.equals(shown) && of.recipe().get().equals(recipe)) {
                            offer(found, recipe);
                        }
                    });
        }
    }

    /** The plans, or what to do by hand where there is none. */
    private void offer(List<ProposedChange> found, Recipe was) {
        if (found.isEmpty()) {
            shown.report()
                    .findings()
                    .forEach(
                            one ->
                                    InputFields.say(
                                            plans,
                                            BatchSentences.finding(one).get(2),
                                            "brew-mend"));
            return;
        }
        InputFields.say(plans, Messages.of("batch.plans"), "brew-finding");
        for (ProposedChange one : found) {
            plans.getChildren()
                    .add(new ProposedChangeView(batch, was, one).taking(() -> taken.accept(was)));
        }
    }
}
