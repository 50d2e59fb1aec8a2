package coldwright.desk.batch;

import coldwright.batch.Basis;
import coldwright.batch.BatchAnalysis;
import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.batch.search.TastingDiagnosis;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.plan.Finding;
import coldwright.text.DisplayText;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Faults of a tasted batch, their causes, and the next batch made from a fix. */
final class TastingView extends VBox {
    private final BatchesModel batches;
    private final Map<Symptom, ToggleButton> symptoms = new EnumMap<>(Symptom.class);
    private final VBox causes = new VBox();
    private BatchModel batch;

    TastingView(BatchesModel brew) {
        this.batches = brew;
        getStyleClass().add("brew-part");
        causes.getStyleClass().add("brew-part");
        FlowPane choices = InputFields.choices();
        for (Symptom symptom : Symptom.values()) {
            ToggleButton button = new ToggleButton(TastingDiagnosis.words(symptom));
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> tasted());
            symptoms.put(symptom, button);
            choices.getChildren().add(button);
        }
        getChildren().addAll(InputFields.heading("batch.tasted"), choices, causes);
    }

    /** Shows another batch with its tasting. */
    void show(BatchModel is) {
        batch = is;
        causes.getChildren().clear();
        symptoms.forEach(
                (symptom, button) ->
                        button.setSelected(is.lineage().get().found().contains(symptom.words())));
        if (!chosenSymptoms().isEmpty() && batch.figuresAreOfNow()) {
            ask();
        }
    }

    private List<Symptom> chosenSymptoms() {
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
        batches.tasted(batch, chosenSymptoms().stream().map(Symptom::words).toList());
        ask();
    }

    private void ask() {
        BatchModel of = batch;
        Recipe recipe = batch.recipe().get();
        List<Symptom> said = chosenSymptoms();
        if (!batch.figuresAreOfNow()) {
            causes.getChildren()
                    .setAll(TextControls.label(Messages.of("batch.tasted.wait"), "brew-why"));
            return;
        }
        BatchAnalysis all = batch.figures().get().orElseThrow();
        batches.ask(
                () -> said.stream().map(one -> TastingDiagnosis.of(one, all)).toList(),
                found -> {
                    if (of.equals(batch) && said.equals(chosenSymptoms())) {
                        causes.getChildren().clear();
                        found.forEach(one -> showCauses(one, recipe));
                    }
                });
    }

    private void showCauses(TastingDiagnosis tastingDiagnosis, Recipe was) {
        InputFields.say(causes, TastingDiagnosis.words(tastingDiagnosis.symptom()), "brew-finding");
        if (tastingDiagnosis.suspects().isEmpty()) {
            InputFields.say(causes, Messages.of("batch.tasted.nothing"), "brew-why");
        }
        for (Finding cause : tastingDiagnosis.suspects()) {
            causes.getChildren().add(causeNode(cause, was));
        }
        String why =
                Messages.of(
                        "batch.tasted.against", TastingDiagnosis.words(tastingDiagnosis.symptom()));
        for (ProposedChange change : tastingDiagnosis.offers()) {
            causes.getChildren()
                    .add(new ProposedChangeView(batch, was, change).making(batches, why));
        }
        Diagnosis.byHand(tastingDiagnosis.symptom())
                .ifPresent(one -> InputFields.say(causes, one.shown(), "brew-why"));
    }

    private Node causeNode(Finding cause, Recipe was) {
        VBox box =
                new VBox(
                        TextControls.label(
                                Messages.of(
                                        "batch.tasted.cause",
                                        cause.sharePercent(),
                                        cause.fault().phrase().shown()),
                                "brew-cause"),
                        TextControls.label(
                                DisplayText.sentence(Basis.labelled(cause.reason()).shown()),
                                "brew-why"));
        InputFields.say(box, DisplayText.sentence(cause.remedy().shown()), "brew-mend");
        ProposedChangeView.belongsTo(box, batch, was);
        box.getStyleClass().add("brew-offer");
        return box;
    }
}
