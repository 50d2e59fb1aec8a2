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
import coldwright.science.plan.Finding;
import coldwright.science.standards.NameVerdict;
import coldwright.science.style.Style;
import coldwright.text.DisplayText;

import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings in plain words, and up to three plans that resolve them. */
final class FindingsView extends VBox {
    /** Plans are made only when typing pauses, so that typing stays quick. */
    private static final Duration REST = Duration.millis(250);

    private final BatchesModel batches;
    private final Consumer<Recipe> taken;
    private final CourseLink.Course lessons;
    private final VBox plans = new VBox();
    private final PauseTransition rest = new PauseTransition(REST);
    private BatchModel batch;
    private BatchAnalysis shown;

    /**
     * Shows findings.
     *
     * @param taken receives the recipe as it was before a plan was taken
     * @param lessons the lessons that findings link to
     */
    FindingsView(BatchesModel brew, Consumer<Recipe> taken, CourseLink.Course lessons) {
        this.batches = brew;
        this.taken = taken;
        this.lessons = lessons;
        getStyleClass().add("brew-findings");
        rest.setOnFinished(event -> ask());
    }

    /** Makes the next call of {@link #show} write all again, in other units. */
    void forget() {
        rest.stop();
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
        names(all.report(), all.state().style());
        plans.getChildren().clear();
        rest.playFromStart();
    }

    /** A finding that opens to its sum, what helps by hand, and the lesson that teaches it. */
    private Node findingBox(Finding finding) {
        List<String> told = BatchSentences.finding(finding);
        VBox why =
                new VBox(
                        TextControls.label(told.get(1), "brew-why"),
                        TextControls.label(told.get(2), "brew-why"));
        lessons.named(finding.fault().lesson())
                .ifPresent(link -> why.getChildren().add(link.button()));
        VBox box = InputFields.unfolding(Messages.of("batch.why"), why, () -> {});
        box.getChildren().add(0, TextControls.label(told.get(0), "brew-finding"));
        return box;
    }

    /** The names by law that it may bear in one line, which opens to what each rule says. */
    private void names(BatchReport report, Style style) {
        List<NameVerdict> claimed = report.claimed(style);
        String names =
                claimed.stream()
                        .filter(NameVerdict::allowed)
                        .map(NameVerdict::name)
                        .distinct()
                        .collect(Collectors.joining(", "));
        String line =
                names.isEmpty()
                        ? Messages.of("batch.names.none")
                        : Messages.of("batch.names", names);
        VBox verdicts = new VBox();
        Stream.concat(claimed.stream(), report.names().stream())
                .distinct()
                .map(one -> DisplayText.sentence(one.phrase().shown()))
                .forEach(one -> InputFields.say(verdicts, one, "brew-why"));
        getChildren().add(InputFields.unfolding(line, verdicts, () -> {}));
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
