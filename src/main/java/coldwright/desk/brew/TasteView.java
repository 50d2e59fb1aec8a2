package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.brew.model.Offer;
import coldwright.desk.brew.model.Recipe;
import coldwright.desk.brew.model.Tasting;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.science.diagnosis.Cause;
import coldwright.science.diagnosis.Symptom;
import coldwright.text.Written;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What is wrong with a batch that was tasted, why, and the next batch made from the mend. */
final class TasteView extends VBox {
    private final BrewModel brew;
    private final Map<Symptom, ToggleButton> symptoms = new EnumMap<>(Symptom.class);
    private final VBox causes = new VBox();
    private BatchModel batch;

    TasteView(BrewModel brew) {
        this.brew = brew;
        getStyleClass().add("brew-part");
        causes.getStyleClass().add("brew-part");
        FlowPane choices = new FlowPane();
        choices.getStyleClass().add("brew-choices");
        for (Symptom symptom : Symptom.values()) {
            ToggleButton button = new ToggleButton(Tasting.words(symptom));
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> tasted());
            symptoms.put(symptom, button);
            choices.getChildren().add(button);
        }
        getChildren().addAll(Fields.heading("batch.tasted"), choices, causes);
    }

    /** Shows another batch, with what was found in it. */
    void show(BatchModel is) {
        batch = is;
        causes.getChildren().clear();
        symptoms.forEach(
                (symptom, button) ->
                        button.setSelected(is.story().get().found().contains(symptom.words())));
        if (!said().isEmpty() && batch.figuresAreOfNow()) {
            ask();
        }
    }

    private List<Symptom> said() {
        List<Symptom> said = new ArrayList<>();
        symptoms.forEach(
                (symptom, button) -> {
                    if (button.isSelected()) {
                        said.add(symptom);
                    }
                });
        return said;
    }

    private void tasted() {
        brew.tasted(batch, said().stream().map(Symptom::words).toList());
        ask();
    }

    private void ask() {
        BatchModel of = batch;
        Recipe recipe = batch.recipe().get();
        List<Symptom> said = said();
        if (!batch.figuresAreOfNow()) {
            causes.getChildren().setAll(Words.label(Say.of("batch.tasted.wait"), "brew-why"));
            return;
        }
        Reckoning all = batch.figures().get().orElseThrow();
        brew.ask(
                () -> said.stream().map(one -> Tasting.of(one, recipe, all)).toList(),
                found -> {
                    if (of.equals(batch) && said.equals(said())) {
                        causes.getChildren().clear();
                        found.forEach(this::tell);
                    }
                });
    }

    private void tell(Tasting tasting) {
        causes.getChildren().add(Words.label(Tasting.words(tasting.symptom()), "brew-finding"));
        if (tasting.suspects().isEmpty()) {
            causes.getChildren().add(Words.label(Say.of("batch.tasted.nothing"), "brew-why"));
        }
        for (Tasting.Suspected suspected : tasting.suspects()) {
            causes.getChildren().add(told(tasting, suspected));
        }
    }

    private Node told(Tasting tasting, Tasting.Suspected suspected) {
        Cause cause = suspected.cause();
        VBox box =
                new VBox(
                        Words.label(
                                Say.of(
                                        "batch.tasted.cause",
                                        Written.decimals(0, cause.sharePercent()),
                                        cause.what()),
                                "brew-cause"),
                        Words.label(Written.sentence(cause.why()), "brew-why"));
        for (Offer offer : suspected.offers()) {
            box.getChildren().add(Words.label(offer.words(), "brew-mend"));
            if (!offer.besides().isEmpty()) {
                String besides = String.join("; ", offer.besides());
                box.getChildren()
                        .add(Words.label(Say.of("batch.wish.besides", besides), "brew-why"));
            }
            box.getChildren().add(next(tasting, offer.recipe(), offer.words()));
        }
        if (suspected.offers().isEmpty()) {
            box.getChildren().add(Words.label(Written.sentence(cause.advice()), "brew-mend"));
            box.getChildren().add(next(tasting, batch.recipe().get(), cause.advice()));
        }
        box.getStyleClass().add("brew-offer");
        return box;
    }

    private Node next(Tasting tasting, Recipe recipe, String mend) {
        String why = Say.of("batch.tasted.against", Tasting.words(tasting.symptom()));
        Button next = Words.button(Say.of("batch.take-next"), () -> brew.next(batch, recipe, why));
        next.setAccessibleText(Say.of("batch.take-next") + ": " + mend);
        return new HBox(next);
    }
}
