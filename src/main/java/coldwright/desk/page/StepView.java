package coldwright.desk.page;

import coldwright.desk.model.CheckModel;
import coldwright.desk.model.ForecastModel;
import coldwright.desk.model.PartModel;
import coldwright.desk.model.Pins;
import coldwright.desk.model.ProseModel;
import coldwright.desk.model.SnippetModel;
import coldwright.desk.model.StepModel;
import coldwright.desk.plate.PlateStack;
import coldwright.desk.prose.ProseView;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.lesson.Fault;

import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** One step on the page: its heading and its parts in order. */
final class StepView extends VBox {
    private final StepModel model;
    private final Consumer<String> openLink;
    private final PageState state;
    private final Pins pins;
    private final Consumer<SnippetModel> fromHere;

    /** Questions whose answer comes with the next run. */
    private final List<ForecastModel> asked = new ArrayList<>();

    StepView(
            StepModel model,
            List<Fault> faults,
            PageState state,
            Pins pins,
            Consumer<String> openLink,
            Consumer<SnippetModel> fromHere) {
        this.fromHere = fromHere;
        this.model = model;
        this.state = state;
        this.pins = pins;
        this.openLink = openLink;
        getStyleClass().add("step");
        if (model.number() > 0) {
            Label number = new Label(Say.of("step.number", String.valueOf(model.number())));
            number.getStyleClass().add("kicker");
            Label title = Words.label(Typography.of(model.title()), "step-title");
            title.setAccessibleRole(AccessibleRole.TEXT);
            VBox head = new VBox(number, title);
            head.getStyleClass().add("step-head");
            getChildren().add(head);
        }
        if (!faults.isEmpty()) {
            getChildren().add(new FaultsView(Say.of("step.faults"), faults));
        }
        model.parts().forEach(part -> add(part));
    }

    private void add(PartModel part) {
        if (part instanceof ProseModel prose) {
            put(new ProseView(prose.prose().nodes(), openLink));
        } else if (part instanceof SnippetModel snippet) {
            SnippetView view =
                    new SnippetView(
                            snippet,
                            state.settings(),
                            state.room().units(),
                            () -> fromHere.accept(snippet));
            PlateStack plates =
                    new PlateStack(
                            snippet.came().drawn(),
                            state.room(),
                            pins,
                            state.figuresBeside().not());
            put(view);
            put(plates);
            snippet.came().lastRun().addListener(run -> showWhatCame(view, plates));
            if (!snippet.snippet().given()) {
                asked.forEach(forecast -> put(new AnswerView(forecast, openLink)));
                asked.clear();
            }
            putSolution(snippet);
        } else if (part instanceof ForecastModel forecast) {
            put(new ForecastView(forecast, state));
            asked.add(forecast);
        } else if (part instanceof CheckModel check) {
            put(new CheckView(check));
        } else {
            throw new AssertionError(part);
        }
    }

    /** One way to do an exercise, to be had once the learner has tried. */
    private void putSolution(SnippetModel snippet) {
        String solution = snippet.snippet().solution();
        if (!solution.isEmpty()) {
            Folded folded =
                    new Folded(
                            Say.of("solution.show"),
                            Say.of("solution.fold"),
                            () -> Words.label(solution, "listing"));
            folded.getStyleClass().add("solution");
            put(Words.shown(folded, snippet.came().everFinished()));
        }
    }

    /** Brings what came of a run into sight, if it is the learner who ran it. */
    private void showWhatCame(SnippetView view, PlateStack plates) {
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
