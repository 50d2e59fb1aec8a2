package coldwright.desk.lesson;

import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.lesson.Lesson;

import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The top of a lesson: title, introduction, and actions on the whole lesson. */
final class LessonFrontView extends VBox {
    /** The top of a lesson; {@code workshop} opens the classroom view. */
    LessonFrontView(
            LessonModel model,
            Node agreement,
            StepView opening,
            Runnable workshop,
            Consumer<HandoutRequest> handout) {
        getStyleClass().add("front");
        Lesson lesson = model.lesson();
        if (!lesson.track().isEmpty()) {
            getChildren().add(TextControls.label(lesson.track(), "kicker"));
        }
        getChildren().add(TextControls.label(lesson.title(), "lesson-title"));
        String terms = terms(lesson);
        if (!terms.isEmpty()) {
            getChildren().add(TextControls.label(terms, "terms"));
        }
        getChildren().addAll(faults(model), agreement, actions(model, workshop, handout), opening);
    }

    private static String terms(Lesson lesson) {
        String minutes =
                lesson.minutes().isEmpty() ? "" : Messages.of("lesson.minutes", lesson.minutes());
        String needs = lesson.needs().isEmpty() ? "" : Messages.of("lesson.needs", lesson.needs());
        return Stream.of(minutes, needs)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    private static Node faults(LessonModel model) {
        LessonFaultsView view = new LessonFaultsView();
        Observable[] runs =
                model.snippets().stream()
                        .map(SnippetModel::result)
                        .flatMap(one -> Stream.of(one.lastRun(), one.changedSinceRun()))
                        .toArray(Observable[]::new);
        WhileShown.follow(view, () -> view.show(head(model.faults().size()), model.faults()), runs);
        return view;
    }

    private static String head(int count) {
        return count == 1 ? Messages.of("lesson.fault") : Messages.of("lesson.faults", count);
    }

    private static Node actions(
            LessonModel model, Runnable workshop, Consumer<HandoutRequest> handout) {
        Button all = TextControls.command("lesson.run-all", model::runAll);
        Button stop = TextControls.command("lesson.stop-all", model.chain()::stop);
        all.disableProperty().bind(model.chain().going());
        stop.disableProperty().bind(model.chain().going().not());
        Label progress = TextControls.styled(new Label(), "status");
        progress.textProperty().bind(model.chain().progress());
        VBox opened = new VBox();
        CollapsibleSection anew =
                new CollapsibleSection(
                        Messages.of("lesson.restart"),
                        Messages.of("lesson.restart"),
                        () -> TextControls.command("lesson.restart.confirm", model::reset),
                        Optional.of(opened));
        Button room = TextControls.command("classroom.open", workshop);
        CollapsibleSection paper =
                new CollapsibleSection(
                        Messages.of("handout"),
                        Messages.of("handout"),
                        () -> new HandoutView(handout),
                        Optional.of(opened));
        FlowPane row =
                TextControls.styled(
                        new FlowPane(all, stop, room, paper, anew, progress), "lesson-actions-row");
        opened.getStyleClass().add("lesson-actions-opened");
        VBox deeds = TextControls.styled(new VBox(row, opened), "lesson-actions");
        return deeds;
    }
}
