package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.brew.model.Foreseen;
import coldwright.desk.brew.model.Offer;
import coldwright.desk.brew.model.Recipe;
import coldwright.desk.brew.model.Told;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.science.diagnosis.Finding;

import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.util.List;
import java.util.function.Consumer;

/** Findings in plain words, each with what can be taken against it. */
final class FindingsView extends VBox {
    /** Mends are looked for only when the keys rest, so that typing stays quick. */
    private static final Duration REST = Duration.millis(250);

    private final BrewModel brew;
    private final Consumer<Recipe> taken;
    private final PauseTransition rest = new PauseTransition(REST);
    private BatchModel batch;
    private Reckoning shown;

    /**
     * Shows findings.
     *
     * @param brew the batches
     * @param taken told the recipe from before a mend was taken
     */
    FindingsView(BrewModel brew, Consumer<Recipe> taken) {
        this.brew = brew;
        this.taken = taken;
        getStyleClass().add("brew-findings");
        rest.setOnFinished(event -> ask());
    }

    /** Shows what to expect of a batch, and looks for mends a moment later. */
    void show(BatchModel of, Reckoning all) {
        if (all.equals(shown) && of.equals(batch)) {
            return;
        }
        batch = of;
        shown = all;
        getChildren().clear();
        if (all.findings().isEmpty()) {
            getChildren().add(Words.label(Say.of("batch.no-findings"), "brew-finding"));
        }
        all.findings().forEach(one -> getChildren().add(new VBox(said(one))));
        rest.playFromStart();
    }

    private static Node[] said(Finding finding) {
        List<String> told = Told.finding(finding);
        return new Node[] {
            Words.label(told.get(0), "brew-finding"),
            Words.label(told.get(1), "brew-why"),
            Words.label(Say.of("batch.mend", told.get(2)), "brew-mend")
        };
    }

    private void ask() {
        BatchModel of = batch;
        Reckoning all = shown;
        Recipe recipe = of.recipe().get();
        if (of.figuresAreOfNow() && !all.findings().isEmpty()) {
            brew.ask(
                    () -> Foreseen.of(recipe, all),
                    found -> {
                        if (all.equals(shown) && of.recipe().get().equals(recipe)) {
                            offer(found, recipe);
                        }
                    });
        }
    }

    private void offer(List<Foreseen> found, Recipe was) {
        for (int i = 0; i < found.size(); i++) {
            List<Offer> offers = found.get(i).offers();
            if (!offers.isEmpty()) {
                VBox box = (VBox) getChildren().get(i);
                box.getChildren().remove(2, box.getChildren().size());
                offers.forEach(one -> box.getChildren().add(box(one, was)));
            }
        }
    }

    private Node box(Offer offer, Recipe was) {
        VBox box = new VBox(Words.label(offer.words(), "brew-mend"));
        if (!offer.besides().isEmpty()) {
            String besides = String.join("; ", offer.besides());
            box.getChildren().add(Words.label(Say.of("batch.wish.besides", besides), "brew-why"));
        }
        Button take = Words.button(Say.of("batch.take"), () -> take(offer, was));
        take.setAccessibleText(Say.of("batch.take") + ": " + offer.words());
        box.getChildren().add(new HBox(take));
        box.getStyleClass().add("brew-offer");
        return box;
    }

    private void take(Offer offer, Recipe was) {
        if (batch.recipe().get().equals(was)) {
            batch.take(offer.recipe(), offer.words());
            taken.accept(was);
        }
    }
}
