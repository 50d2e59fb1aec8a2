package coldwright.desk.lesson;

import coldwright.desk.figure.FigureStack;
import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.glossary.TermFinder;
import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.CheckModel;
import coldwright.desk.lesson.model.PartModel;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.prose.ProseView;
import coldwright.lesson.LessonFault;

import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** One step on the page: its heading and its parts in order. */
final class StepView extends VBox implements PartModel.Visitor {
    private final TermFinder terms = new TermFinder();
    private final StepModel model;
    private final Consumer<String> openLink;
    private final PageState state;
    private final PinnedFigures pinnedFigures;
    private final Consumer<SnippetModel> fromHere;

    /** Questions whose answer comes with the next run. */
    private final List<PredictionModel> asked = new ArrayList<>();

    StepView(
            StepModel model,
            List<LessonFault> faults,
            PageState state,
            PinnedFigures pinnedFigures,
            Consumer<String> openLink,
            Consumer<SnippetModel> fromHere) {
        this.fromHere = fromHere;
        this.model = model;
        this.state = state;
        this.pinnedFigures = pinnedFigures;
        this.openLink = openLink;
        getStyleClass().add("step");
        if (model.number() > 0) {
            Label number =
                    TextControls.styled(
                            new Label(Messages.of("step.number", model.number())), "kicker");
            Label title = TextControls.label(model.title(), "step-title");
            title.setAccessibleRole(AccessibleRole.TEXT);
            VBox head = TextControls.styled(new VBox(number, title), "step-head");
            getChildren().add(head);
        }
        put(new LessonFaultsView().show(Messages.of("step.faults"), faults));
        model.parts().forEach(part -> part.accept(this));
    }

    @Override
    public void prose(PartModel.Prose prose) {
        put(new ProseView(prose.nodes(), openLink, terms));
    }

    @Override
    public void snippet(SnippetModel snippet) {
        SnippetView view =
                new SnippetView(
                        snippet,
                        state.settings(),
                        state.figureSettings().units(),
                        () -> fromHere.accept(snippet));
        FigureStack plates =
                new FigureStack(
                        snippet.result().drawn(),
                        state.figureSettings(),
                        pinnedFigures,
                        state.figureSettings().figuresBeside().not());
        put(view);
        put(plates);
        WhileShown.changes(view, () -> showResults(view, plates), snippet.result().lastRun());
        if (!snippet.snippet().given()) {
            asked.forEach(model -> put(new AnswerView(model, openLink)));
            asked.clear();
        }
        putSolution(snippet);
    }

    @Override
    public void prediction(PredictionModel prediction) {
        put(new PredictionView(prediction, state));
        if (prediction.withoutRun()) {
            put(new AnswerView(prediction, openLink));
        } else {
            asked.add(prediction);
        }
    }

    @Override
    public void check(CheckModel check) {
        put(new CheckView(check));
    }

    /** A solution of an exercise, available once the learner has tried. */
    private void putSolution(SnippetModel snippet) {
        String solution = snippet.snippet().solution();
        if (!solution.isEmpty()) {
            CollapsibleSection collapsibleSection =
                    new CollapsibleSection(
                            Messages.of("solution.show"),
                            Messages.of("solution.hide"),
                            () -> TextControls.literal(solution, "listing"));
            collapsibleSection.getStyleClass().add("solution");
            put(TextControls.shown(collapsibleSection, snippet.result().everFinished()));
        }
    }

    /** Scrolls to the outcome of a run, if the learner started it. */
    private void showResults(SnippetView view, FigureStack plates) {
        if (view.isFocusWithin()) {
            Platform.runLater(
                    () -> LessonView.reveal(plates.isManaged() ? plates : view.outcome(), this));
        }
    }

    private void put(Node node) {
        getChildren().add(node);
    }

    StepModel model() {
        return model;
    }
}
