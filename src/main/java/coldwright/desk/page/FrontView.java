package coldwright.desk.page;

import coldwright.desk.model.LessonModel;
import coldwright.desk.model.Slips;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.lesson.Fault;
import coldwright.lesson.Lesson;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands before a lesson's first step: what it is, and what can be done with the whole. */
final class FrontView extends VBox {
    /**
     * Sets it.
     *
     * @param model the lesson
     * @param agreement asks whether its snippets may run, and says if its author writes it
     * @param opening the text before the first step
     * @param workshop lays the lesson out for a room
     * @param handout sets it for paper
     */
    FrontView(
            LessonModel model,
            Node agreement,
            StepView opening,
            Runnable workshop,
            Consumer<HandoutChoice> handout) {
        getStyleClass().add("front");
        Lesson lesson = model.lesson();
        if (!lesson.track().isEmpty()) {
            getChildren().add(Words.label(lesson.track(), "kicker"));
        }
        getChildren().add(Words.label(Typography.of(lesson.title()), "lesson-title"));
        String terms = terms(lesson);
        if (!terms.isEmpty()) {
            getChildren().add(Words.label(Typography.of(terms), "terms"));
        }
        getChildren().addAll(slips(model), agreement, deeds(model, workshop, handout), opening);
    }

    private static String terms(Lesson lesson) {
        String minutes =
                lesson.minutes().isEmpty() ? "" : Say.of("lesson.minutes", lesson.minutes());
        String needs = lesson.needs().isEmpty() ? "" : Say.of("lesson.needs", lesson.needs());
        return Stream.of(minutes, needs)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    private static Node slips(LessonModel model) {
        Slips slips = new Slips(model);
        FaultsView view = new FaultsView("", List.of());
        Runnable refresh =
                () -> {
                    List<Fault> all = slips.all();
                    view.show(head(all.size()), all);
                    Words.show(view, !all.isEmpty());
                };
        slips.whenChanged(refresh);
        refresh.run();
        return view;
    }

    private static String head(int count) {
        return count == 1 ? Say.of("lesson.fault") : Say.of("lesson.faults", String.valueOf(count));
    }

    private static Node deeds(
            LessonModel model, Runnable workshop, Consumer<HandoutChoice> handout) {
        Button all = Words.button(Say.of("lesson.run-all"), model::runAll);
        Button stop = Words.button(Say.of("lesson.stop-all"), model.chain()::stop);
        all.disableProperty().bind(model.chain().going());
        stop.disableProperty().bind(model.chain().going().not());
        Label progress = new Label();
        progress.getStyleClass().add("status");
        progress.textProperty().bind(model.chain().progress());
        VBox opened = new VBox();
        Folded anew =
                new Folded(
                        Say.of("lesson.anew"),
                        Say.of("lesson.anew"),
                        () -> Words.button(Say.of("lesson.anew.sure"), model::reset),
                        Optional.of(opened));
        Button room = Words.button(Say.of("lesson.workshop"), workshop);
        Folded paper =
                new Folded(
                        Say.of("handout"),
                        Say.of("handout"),
                        () -> new HandoutView(handout),
                        Optional.of(opened));
        FlowPane row = new FlowPane(all, stop, room, paper, anew, progress);
        row.getStyleClass().add("deeds-row");
        opened.getStyleClass().add("deeds-opened");
        VBox deeds = new VBox(row, opened);
        deeds.getStyleClass().add("deeds");
        return deeds;
    }
}
