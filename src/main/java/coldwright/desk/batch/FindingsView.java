package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.search.FindingWithFixes;
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

/** Findings in plain words, each with its fixes. */
final class FindingsView extends VBox {
    /** Fixes are searched only when typing pauses, so that typing stays quick. */
    private static final Duration REST = Duration.millis(250);

    private final BatchesModel batches;
    private final Consumer<Recipe> taken;
    private final PauseTransition rest = new PauseTransition(REST);
    private BatchModel batch;
    private BatchAnalysis shown;

    /**
     * Shows findings.
     *
     * @param taken receives the recipe as it was before a fix was applied
     */
    FindingsView(BatchesModel brew, Consumer<Recipe> taken) {
        this.batches = brew;
        this.taken = taken;
        getStyleClass().add("brew-findings");
        rest.setOnFinished(event -> ask());
    }

    /** Shows what to expect of a batch, and searches for fixes a moment later. */
    void show(BatchModel of, BatchAnalysis all) {
        if (all.equals(shown) && of.equals(batch)) {
            return;
        }
        batch = of;
        shown = all;
        getChildren().clear();
        if (all.report().findings().isEmpty()) {
            getChildren().add(TextControls.label(BatchReport.NO_FINDINGS.shown(), "brew-finding"));
        }
        all.report().findings().forEach(one -> getChildren().add(new VBox(findingNodes(one))));
        rest.playFromStart();
    }

    private static Node[] findingNodes(Finding finding) {
        List<String> told = BatchSentences.finding(finding);
        return new Node[] {
            TextControls.label(told.get(0), "brew-finding"),
            TextControls.label(told.get(1), "brew-why"),
            TextControls.label(Messages.of("batch.mend", told.get(2)), "brew-mend")
        };
    }

    private void ask() {
        BatchModel of = batch;
        BatchAnalysis all = shown;
        Recipe recipe = of.recipe().get();
        if (of.figuresAreOfNow() && !all.report().findings().isEmpty()) {
            batches.ask(
                    () -> FindingWithFixes.of(recipe, all),
                    found -> {
                        if (all.equals(shown) && of.recipe().get().equals(recipe)) {
                            offer(found, recipe);
                        }
                    });
        }
    }

    private void offer(List<FindingWithFixes> found, Recipe was) {
        for (int i = 0; i < found.size(); i++) {
            List<ProposedChange> offers = found.get(i).offers();
            if (!offers.isEmpty()) {
                VBox box = (VBox) getChildren().get(i);
                box.getChildren().remove(2, box.getChildren().size());
                offers.forEach(one -> box.getChildren().add(box(one, was)));
            }
        }
    }

    private Node box(ProposedChange change, Recipe was) {
        return new ProposedChangeView(
                batch,
                was,
                change,
                ProposedChangeView.deed(
                        "batch.take",
                        change.words(),
                        () -> {
                            batch.take(change.recipe(), change.words());
                            taken.accept(was);
                        }));
    }
}
