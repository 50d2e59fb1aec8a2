package coldwright.tour;

import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** A dial turned by keys to both ends and through the middle, with the time to the new figure. */
final class DialTour {
    private static final double PATIENCE_S = 2;
    private static final int PAUSE_MS = 60;
    private static final int TURNS = 12;

    private final Scene scene;
    private final Node step;
    private final Node snippet;
    private final int index;
    private final String from;
    private final List<Double> ms = new ArrayList<>();
    private int seenToMove;

    DialTour(Scene scene, Node step, Node snippet, int index) throws Exception {
        this.scene = scene;
        this.step = step;
        this.snippet = snippet;
        this.index = index;
        this.from = Hands.ask(() -> number().getText());
    }

    private Node dial() {
        return Hands.within(snippet, "dial").skip(index).findFirst().orElseThrow();
    }

    private Slider slider() {
        return (Slider)
                Hands.all(dial()).filter(node -> node instanceof Slider).findFirst().orElseThrow();
    }

    private TextField number() {
        return (TextField)
                Hands.all(dial())
                        .filter(node -> node instanceof TextField)
                        .findFirst()
                        .orElseThrow();
    }

    /** Turns it notch by notch around the middle of its range. */
    void take() throws Exception {
        Hands.act(
                () -> {
                    Hands.scrollTo(snippet);
                    slider().requestFocus();
                });
        press(KeyCode.HOME, false);
        int pages = 0;
        while (Hands.ask(() -> slider().getValue() < (slider().getMin() + slider().getMax()) / 2)
                && pages++ < 20) {
            press(KeyCode.PAGE_UP, false);
        }
        for (int i = 0; i < TURNS; i++) {
            press(i < TURNS / 2 ? KeyCode.LEFT : KeyCode.RIGHT, true);
        }
    }

    private void press(KeyCode code, boolean timed) throws Exception {
        List<Object> before = Hands.ask(this::shown);
        double value = Hands.ask(() -> slider().getValue());
        Hands.act(() -> Hands.key(slider(), code));
        double took = Hands.await(() -> !shown().equals(before), timed ? PATIENCE_S : 0.7);
        if (!Double.isNaN(took)) {
            seenToMove++;
            if (timed) {
                ms.add(took);
            }
        } else if (timed && value != Hands.ask(() -> slider().getValue())) {
            ms.add(PATIENCE_S * 1000);
        }
        Thread.sleep(PAUSE_MS);
    }

    /** All that a reader would see change: figures and printed words. */
    private List<Object> shown() {
        List<Object> all = new ArrayList<>();
        Hands.all(scene.getRoot())
                .filter(node -> node instanceof ImageView)
                .forEach(node -> all.add(Objects.hashCode(((ImageView) node).getImage())));
        Hands.within(step, "outcome").forEach(node -> all.add(Hands.words(node)));
        return all;
    }

    void goTo(String end) throws Exception {
        Hands.act(() -> slider().requestFocus());
        press(end.equals("least") ? KeyCode.HOME : KeyCode.END, false);
    }

    /** Types the number that it stood at. */
    void back() throws Exception {
        Hands.act(
                () -> {
                    number().requestFocus();
                    number().setText(from);
                    number().fireEvent(new javafx.event.ActionEvent());
                });
        Hands.settle(900);
    }

    List<Double> ms() {
        return ms.stream().filter(one -> one < PATIENCE_S * 1000).toList();
    }

    List<String> troubles() {
        return seenToMove == 0 ? List.of("dial " + (index + 1) + " changed nothing") : List.of();
    }

    static String median(List<Double> ms) {
        return ms.isEmpty()
                ? "–"
                : told(ms.stream().sorted().skip(ms.size() / 2).findFirst().get());
    }

    static String most(List<Double> ms) {
        return ms.isEmpty() ? "–" : told(ms.stream().max(Double::compare).get());
    }

    private static String told(double ms) {
        return String.format(Locale.ROOT, "%.0f", ms);
    }
}
