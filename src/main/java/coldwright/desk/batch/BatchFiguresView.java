package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchPreview;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeExample;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.batch.model.BatchFigures;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FigureStack;
import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.figure.Figure;

import javafx.animation.PauseTransition;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import javafx.util.Subscription;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** What to expect of a batch: tiles, findings in plain words, then the large figures. */
final class BatchFiguresView extends VBox {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    /**
     * Results of an earlier recipe are dimmed only if they stay, so that typing doesn't flicker.
     */
    private static final Duration DIM_AFTER = Duration.millis(300);

    private final BatchesModel batches;
    private final BatchTilesView tiles;
    private final VBox differences = part("brew-differences");
    private final VBox facts = part("brew-facts");
    private final VBox sources = part("brew-said");
    private final PauseTransition dimming = new PauseTransition(DIM_AFTER);
    private final FindingsView findings;
    private final FreezeClockView face;
    private final VBox clock = part("brew-said");
    private final VBox crystals = part("brew-said");
    private final VBox cautions = part("brew-cautions");
    private final ObservableList<ShownFigure> curve = FXCollections.observableArrayList();
    private final ObservableList<ShownFigure> inside = FXCollections.observableArrayList();
    private final ObservableList<ShownFigure> time = FXCollections.observableArrayList();
    private final ObservableList<ShownFigure> days = FXCollections.observableArrayList();
    private final Subscription compared;
    private Subscription followed = Subscription.EMPTY;
    private final VBox content = part("brew-figures");
    private final VBox examples = part("brew-said");
    private final FlowPane example = InputFields.choices();
    private BatchModel batch;

    /**
     * Shows figures.
     *
     * @param taken receives the recipe as it was before a fix was applied
     * @param reveal scrolls to a node
     * @param lessons the lessons that findings link to
     */
    BatchFiguresView(
            BatchesModel brew,
            FigureSettings room,
            Consumer<Recipe> taken,
            Consumer<Node> reveal,
            CourseLink.Course lessons) {
        this.batches = brew;
        findings = new FindingsView(brew, taken, lessons);
        face = new FreezeClockView(room.emPx());
        SimpleBooleanProperty wanted = new SimpleBooleanProperty(true);
        PinnedFigures pinnedFigures = new PinnedFigures();
        FigureStack insidePlate = new FigureStack(inside, room, pinnedFigures, wanted);
        FigureStack curvePlate = new FigureStack(curve, room, pinnedFigures, wanted);
        FigureStack daysPlate = new FigureStack(days, room, pinnedFigures, wanted);
        Node clockHeading = InputFields.heading("batch.clock");
        tiles =
                new BatchTilesView(
                        room.emPx(),
                        new BatchTilesView.LargeFigureLink(
                                () -> reveal.accept(insidePlate),
                                () -> reveal.accept(curvePlate),
                                () -> reveal.accept(clockHeading),
                                () -> reveal.accept(daysPlate)));
        getChildren().addAll(examples, content);
        for (RecipeExample one : RecipeExample.values()) {
            String name = Messages.of("batch.example." + one.name());
            example.getChildren()
                    .add(
                            TextControls.button(
                                    name, () -> batch.change("", one.recipe().called(name))));
        }
        InputFields.say(examples, Messages.of("batch.example"), "brew-fact");
        examples.getChildren().add(example);
        content.getChildren()
                .addAll(
                        tiles,
                        facts,
                        InputFields.heading("batch.expect"),
                        findings,
                        InputFields.unfolding(Messages.of("batch.sources"), sources, () -> {}),
                        differences,
                        curvePlate,
                        insidePlate,
                        clockHeading,
                        face,
                        new FigureStack(time, room, pinnedFigures, wanted),
                        clock,
                        daysPlate,
                        crystals,
                        InputFields.heading("batch.mind"),
                        cautions);
        dimming.setOnFinished(event -> dim());
        compared =
                brew.against()
                        .subscribe(
                                () -> {
                                    showPreview();
                                    showAnalysis();
                                });
    }

    private static VBox part(String look) {
        VBox part = new VBox();
        part.getStyleClass().add(look);
        return part;
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        followed.unsubscribe();
        batch = is;
        findings.forget();
        followed =
                Subscription.combine(
                        batch.preview().subscribe(this::showPreview),
                        batch.figures().subscribe(this::showAnalysis),
                        batch.stale().subscribe(dimming::playFromStart));
        showPreview();
        showAnalysis();
        dim();
    }

    /** Stops following the batch and the one to compare it with. */
    void close() {
        followed.unsubscribe();
        compared.unsubscribe();
    }

    private void showPreview() {
        if (batch == null) {
            return;
        }
        boolean empty = batch.preview().get().isEmpty();
        TextControls.show(
                examples,
                empty && batch.recipe().get().lines().stream().allMatch(RecipeLine::unfinished));
        TextControls.show(content, !empty);
        if (empty) {
            return;
        }
        BatchPreview now = batch.preview().get().get();
        Optional<BatchPreview> other = batches.against().get().flatMap(one -> one.preview().get());
        tiles.show(now, batches.against().get());
        say(facts, BatchSentences.facts(now.report()), "brew-fact");
        curve.setAll(
                new ShownFigure(BatchFigures.freezing(now), other.map(BatchFigures::freezing)));
        inside.setAll(new ShownFigure(BatchFigures.inside(now), Optional.empty()));
        batches.against()
                .get()
                .ifPresentOrElse(this::compare, () -> differences.getChildren().clear());
        TextControls.show(differences, !differences.getChildren().isEmpty());
    }

    private void dim() {
        content.pseudoClassStateChanged(STALE, batch.stale().get());
    }

    private void compare(BatchModel other) {
        String number = String.valueOf(other.lineage().get().number());
        List<String> changed = BatchDifferences.between(other, batch);
        differences.getChildren().clear();
        InputFields.say(differences, Messages.of("batch.against", number), "brew-heading");
        InputFields.say(
                differences,
                changed.isEmpty() ? Messages.of("batch.alike") : String.join("; ", changed),
                "brew-fact");
    }

    private void showAnalysis() {
        if (batch == null || batch.figures().get().isEmpty()) {
            return;
        }
        BatchAnalysis all = batch.figures().get().get();
        Optional<BatchAnalysis> other = batches.against().get().flatMap(one -> one.figures().get());
        batches.against().get().ifPresent(this::compare);
        tiles.show(all, batches.against().get());
        findings.show(batch, all);
        face.show(all);
        draw(time, all, other, one -> Optional.of(BatchFigures.clock(one)));
        draw(days, all, other, BatchFigures::crystals);
        say(sources, BatchSentences.sources(all.report()), "brew-why");
        say(clock, BatchSentences.plan(all), "brew-why");
        say(crystals, List.of(BatchSentences.crystals(all.report())), "brew-why");
        say(cautions, BatchSentences.cautions(all), "brew-caution");
    }

    private static void draw(
            ObservableList<ShownFigure> plates,
            BatchAnalysis now,
            Optional<BatchAnalysis> other,
            Function<BatchAnalysis, Optional<Figure>> picture) {
        Optional<Figure> earlier =
                other.flatMap(picture)
                        .filter(
                                was ->
                                        picture.apply(now)
                                                .filter(is -> is.x().equals(was.x()))
                                                .isPresent());
        plates.setAll(
                picture.apply(now)
                        .map(is -> List.of(new ShownFigure(is, earlier)))
                        .orElse(List.of()));
    }

    private static void say(VBox part, List<String> sentences, String look) {
        part.getChildren()
                .setAll(sentences.stream().map(one -> TextControls.label(one, look)).toList());
    }
}
