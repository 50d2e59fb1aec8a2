package coldwright.tour;

import coldwright.desk.code.CodeEditor;
import coldwright.desk.messages.Messages;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One step of a lesson: what it asks is answered, what it runs is run, what it turns is turned. */
final class StepTour {
    private static final double RUN_PATIENCE_S = 45;
    private static final int SETTLE_MS = 450;
    private static final String RAN = Messages.of("snippet.ran", "").strip();

    private final Stage stage;
    private final Node step;
    private final String name;
    private final Pictures pictures;
    private final List<String> troubles = new ArrayList<>();
    private final List<Double> runMs = new ArrayList<>();
    private final List<Double> dialMs = new ArrayList<>();

    StepTour(Stage stage, Node step, String name, Pictures pictures) {
        this.stage = stage;
        this.step = step;
        this.name = name;
        this.pictures = pictures;
    }

    /** Goes through it; how many troubles it met. */
    int take() throws Exception {
        Hands.act(() -> Hands.scrollTo(step));
        Hands.settle(SETTLE_MS);
        for (Node forecast : seen("prediction")) {
            answer(forecast);
        }
        pictures.write(name + "-a-before", List.of(step));
        int at = 0;
        for (Node snippet : seen("snippet")) {
            run(snippet);
            if (at++ == 0) {
                pictures.write(name + "-b-screen", stage.getScene());
            }
        }
        play();
        picture("-c-run");
        for (Node snippet : seen("snippet")) {
            turn(snippet);
        }
        for (Node solution : seen("solution")) {
            exercise(solution);
        }
        checks();
        System.out.printf(
                Locale.ROOT,
                "%s  run %s ms  dial %s/%s ms  %s  %s%n",
                name,
                runMs.stream().map(ms -> "%.0f".formatted(ms)).collect(Collectors.joining("+")),
                DialTour.median(dialMs),
                DialTour.most(dialMs),
                Hands.ask(this::title),
                troubles.isEmpty() ? "" : "TROUBLE " + troubles);
        return troubles.size();
    }

    private void answer(Node forecast) throws Exception {
        Hands.act(
                () -> {
                    Hands.all(forecast)
                            .filter(node -> node instanceof RadioButton)
                            .findFirst()
                            .ifPresent(node -> ((RadioButton) node).fire());
                    Hands.all(forecast)
                            .filter(node -> node instanceof TextField)
                            .forEach(node -> ((TextField) node).setText("5"));
                });
        List<Node> pads = Hands.ask(() -> Hands.within(forecast, "sketch-pad").toList());
        if (!pads.isEmpty()) {
            Hands.act(() -> Hands.scrollTo(forecast));
            Hands.settle(SETTLE_MS);
            Hands.act(() -> Hands.stroke(pads.get(0)));
        }
    }

    /** Presses Run and waits until the snippet rests. */
    private void run(Node snippet) throws Exception {
        if (Hands.ask(() -> Hands.within(snippet, "run-word").findAny().isEmpty())) {
            return;
        }
        Hands.act(
                () -> {
                    Hands.scrollTo(snippet);
                    Button run = (Button) Hands.within(snippet, "run-word").findFirst().get();
                    run.requestFocus();
                    run.fire();
                });
        double ms = rest(snippet);
        runMs.add(ms);
        if (Double.isNaN(ms)) {
            troubles.add("a run did not end");
        }
        troubles.addAll(Hands.ask(() -> wrong(snippet)));
    }

    /** Waits until a snippet runs no more; after how many milliseconds. */
    private static double rest(Node snippet) throws Exception {
        double ms =
                Hands.await(
                        () -> !Hands.within(snippet, "run-word").findFirst().get().isDisabled(),
                        RUN_PATIENCE_S);
        Hands.settle(SETTLE_MS);
        return ms;
    }

    /** What a snippet says that is not as it should be. */
    private static List<String> wrong(Node snippet) {
        List<String> wrong = new ArrayList<>();
        for (String look : List.of("error", "runs-long", "input-error")) {
            Hands.within(snippet, look)
                    .map(Hands::words)
                    .filter(text -> !text.isBlank())
                    .forEach(wrong::add);
        }
        String status = status(snippet);
        if (!status.startsWith(RAN)) {
            wrong.add(status);
        }
        return wrong;
    }

    private void turn(Node snippet) throws Exception {
        int count = Hands.ask(() -> (int) Hands.within(snippet, "dial").count());
        for (int i = 0; i < count; i++) {
            DialTour dial = new DialTour(stage.getScene(), step, snippet, i);
            dial.take();
            dialMs.addAll(dial.ms());
            for (String end : List.of("least", "most")) {
                dial.goTo(end);
                rest(snippet);
                for (String one : Hands.ask(() -> wrong(snippet))) {
                    troubles.add("dial " + (i + 1) + " at its " + end + ": " + one);
                }
                picture("-d-dial" + (i + 1) + "-" + end);
            }
            dial.back();
            troubles.addAll(dial.troubles());
        }
    }

    /** A drawing that moves is let run for a while. */
    private void play() throws Exception {
        List<Node> bars =
                Hands.ask(
                        () ->
                                Hands.inWindow(
                                                node ->
                                                        node.getStyleClass().contains("play-bar")
                                                                && Hands.isSeen(node))
                                        .toList());
        for (Node bar : bars) {
            String before = Hands.ask(() -> Hands.words(bar));
            Hands.act(() -> firstButton(bar).fire());
            Hands.settle(2500);
            if (before.equals(Hands.ask(() -> Hands.words(bar)))) {
                troubles.add("Play moved nothing");
            }
            picture("-c-playing");
            if (Hands.ask(() -> firstButton(bar).getText()).equals(Messages.of("figure.pause"))) {
                Hands.act(() -> firstButton(bar).fire());
            }
        }
    }

    /** First a broken text, then the task as it stands, then the answer. */
    private void exercise(Node solution) throws Exception {
        List<Node> snippets = seen("snippet");
        Node snippet =
                Hands.ask(
                        () ->
                                snippets.stream()
                                        .filter(one -> one.getParent() == solution.getParent())
                                        .filter(one -> isBefore(one, solution))
                                        .reduce((one, later) -> later)
                                        .orElseThrow());
        CodeEditor slip =
                (CodeEditor)
                        Hands.ask(() -> Hands.within(snippet, "code-editor").findFirst().get());
        String given = Hands.ask(slip::getText);
        Hands.act(() -> slip.replaceText(given.strip() + "\nvar wrong = Mix.of(grams(10, MLIK));"));
        List<String> before = List.copyOf(troubles);
        run(snippet);
        troubles.retainAll(before);
        if (Hands.ask(() -> Hands.within(snippet, "problem").findAny().isEmpty())) {
            troubles.add("a slip of the pen was not told");
        }
        picture("-e-slip");
        if (Hands.ask(() -> checksHeld()).startsWith("all")) {
            troubles.add("the exercise was solved before it was done");
        }
        Hands.act(
                () ->
                        ((ToggleButton)
                                        Hands.all(solution)
                                                .filter(node -> node instanceof ToggleButton)
                                                .findFirst()
                                                .get())
                                .fire());
        Hands.settle(SETTLE_MS);
        String answer =
                Hands.ask(() -> Hands.words(Hands.within(solution, "listing").findFirst().get()));
        Hands.act(() -> slip.replaceText(answer));
        run(snippet);
        List<Node> all = seen("snippet");
        for (Node below : all.subList(all.indexOf(snippet) + 1, all.size())) {
            run(below);
        }
        picture("-f-solved");
    }

    private static boolean isBefore(Node one, Node other) {
        List<Node> both = one.getParent().getChildrenUnmodifiable();
        return both.indexOf(one) < both.indexOf(other);
    }

    private void checks() throws Exception {
        Hands.settle(SETTLE_MS);
        String held = Hands.ask(this::checksHeld);
        if (!held.isEmpty() && !held.startsWith("all")) {
            troubles.add(held);
        }
    }

    private String checksHeld() {
        boolean every =
                Hands.within(step, "check-summary")
                        .map(Hands::words)
                        .allMatch(
                                text ->
                                        text.equals(Messages.of("check.passes"))
                                                || text.matches(
                                                        Messages.of("check.all-pass", "[0-9]+")));
        String told =
                Hands.within(step, "check-summary")
                        .map(Hands::words)
                        .collect(Collectors.joining(" "));
        return told.isEmpty() ? "" : (every ? "all hold " : "") + told;
    }

    private void picture(String what) throws Exception {
        Hands.settle(SETTLE_MS);
        List<Node> both = new ArrayList<>();
        both.add(step);
        both.addAll(
                Hands.ask(
                        () ->
                                Hands.inWindow(
                                                node ->
                                                        node.getStyleClass().contains("figures-box")
                                                                && Hands.isSeen(node))
                                        .toList()));
        pictures.write(name + what, both);
    }

    /** Snippets of a step that don't stand as they ran. */
    static String statuses(Node step) {
        return Hands.within(step, "snippet")
                .map(StepTour::status)
                .filter(text -> !text.startsWith(RAN))
                .collect(Collectors.joining("; "));
    }

    private List<Node> seen(String look) throws Exception {
        return Hands.ask(() -> Hands.within(step, look).toList());
    }

    private static String status(Node snippet) {
        return Hands.within(snippet, "status").map(Hands::words).findFirst().orElse(RAN);
    }

    private String title() {
        return Hands.within(step, "step-title").map(Hands::words).findFirst().orElse("");
    }

    private static Button firstButton(Node bar) {
        return (Button) Hands.all(bar).filter(node -> node instanceof Button).findFirst().get();
    }
}
