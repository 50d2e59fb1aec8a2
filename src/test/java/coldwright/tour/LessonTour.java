package coldwright.tour;

import coldwright.desk.DeskApp;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.stage.Stage;
import javafx.stage.Window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A process of its own that opens the window and goes through lessons step by step. It prints a
 * line for each step and at its end how many troubles it met.
 */
public final class LessonTour {
    private static final double PATIENCE_S = 60;

    private LessonTour() {}

    /**
     * Takes the tour.
     *
     * @param words the folder for the pictures, and the numbers of the lessons, from 1; without
     *     numbers all of them
     * @throws Exception if the window does not answer
     */
    public static void main(String[] words) throws Exception {
        Thread app = new Thread(() -> Application.launch(DeskApp.class), "app");
        app.setDaemon(true);
        app.start();
        while (Window.getWindows().isEmpty()) {
            Thread.sleep(50);
        }
        Hands.await(() -> rows().count() > 0, PATIENCE_S);
        Hands.settle(500);
        Stage stage = Hands.ask(() -> (Stage) Window.getWindows().get(0));
        int count = (int) (long) Hands.ask(() -> rows().count());
        List<Integer> wanted =
                words.length > 1
                        ? Stream.of(words).skip(1).map(Integer::valueOf).toList()
                        : Stream.iterate(1, n -> n + 1).limit(count).toList();
        Pictures pictures = new Pictures(Path.of(words[0]));
        int troubles = 0;
        for (int number : wanted) {
            troubles += lesson(stage, number, pictures);
        }
        System.out.printf("%d lessons, %d troubles%n", wanted.size(), troubles);
        Platform.exit();
        System.exit(troubles == 0 ? 0 : 1);
    }

    private static Stream<Node> rows() {
        return Hands.inWindow(node -> node.getStyleClass().contains("home-lesson"));
    }

    private static int lesson(Stage stage, int number, Pictures pictures) throws Exception {
        Hands.act(() -> home().ifPresent(Button::fire));
        Hands.await(() -> rows().count() >= number, PATIENCE_S);
        Hands.act(() -> ((Button) rows().skip(number - 1).findFirst().orElseThrow()).fire());
        Hands.await(() -> steps().size() > 1, PATIENCE_S);
        int before;
        do {
            before = Hands.ask(() -> steps().size());
            Hands.settle(600);
        } while (Hands.ask(() -> steps().size()) > before);
        int troubles = 0;
        List<Node> steps = Hands.ask(LessonTour::steps);
        for (int i = 0; i < steps.size(); i++) {
            StepTour step =
                    new StepTour(stage, steps.get(i), "%02d-%02d".formatted(number, i), pictures);
            troubles += step.take();
        }
        for (Node step : steps) {
            String left = Hands.ask(() -> StepTour.statuses(step));
            if (!left.isEmpty()) {
                System.out.printf("%02d    left at the end: %s%n", number, left);
            }
        }
        return troubles;
    }

    private static Optional<Button> home() {
        return Hands.inWindow(
                        node ->
                                node instanceof Button button
                                        && button.getText().equals("Coldwright")
                                        && Hands.isSeen(node))
                .map(Button.class::cast)
                .findFirst();
    }

    private static List<Node> steps() {
        return Hands.inWindow(node -> node.getStyleClass().contains("step") && Hands.isSeen(node))
                .toList();
    }
}
