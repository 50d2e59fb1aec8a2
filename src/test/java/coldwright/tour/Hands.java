package coldwright.tour;

import javafx.application.Platform;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Window;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks at the window and works it: finds, waits, scrolls, presses keys and the mouse. */
final class Hands {
    private static final int PATIENCE_S = 60;
    private static final int LOOK_AGAIN_MS = 4;

    private Hands() {}

    /** What can be seen of one kind below a node, in the order of the page. */
    static Stream<Node> within(Node root, String look) {
        return all(root).filter(node -> node.getStyleClass().contains(look) && isSeen(node));
    }

    static Stream<Node> all(Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(Hands::all))
                : Stream.of(node);
    }

    static Stream<Node> inWindow(Predicate<Node> wanted) {
        return Window.getWindows().stream()
                .filter(Window::isShowing)
                .flatMap(window -> all(window.getScene().getRoot()))
                .filter(wanted);
    }

    static boolean isSeen(Node node) {
        for (Node one = node; one != null; one = one.getParent()) {
            if (!one.isVisible()) {
                return false;
            }
        }
        return true;
    }

    /** Asks on the window's thread. */
    static <T> T ask(Callable<T> question) throws Exception {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    try {
                        answer.complete(question.call());
                    } catch (Exception | AssertionError e) {
                        answer.completeExceptionally(e);
                    }
                });
        return answer.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    static void act(Runnable deed) throws Exception {
        ask(
                () -> {
                    deed.run();
                    return true;
                });
    }

    /** Waits until something holds; whether it did, and after how many milliseconds. */
    static double await(BooleanSupplier condition, double patienceS) throws Exception {
        long begun = System.nanoTime();
        while (!ask(condition::getAsBoolean)) {
            if ((System.nanoTime() - begun) / 1e9 > patienceS) {
                return Double.NaN;
            }
            Thread.sleep(LOOK_AGAIN_MS);
        }
        return (System.nanoTime() - begun) / 1e6;
    }

    /** Lets layout and painting settle. */
    static void settle(int ms) throws Exception {
        Thread.sleep(ms);
        act(() -> {});
    }

    /** Scrolls the page so that a node stands at its top. */
    static void scrollTo(Node node) {
        for (Node one = node.getParent(); one != null; one = one.getParent()) {
            if (one instanceof ScrollPane pane && pane.getStyleClass().contains("reading")) {
                pane.applyCss();
                pane.layout();
                Bounds at =
                        pane.getContent().sceneToLocal(node.localToScene(node.getLayoutBounds()));
                double room =
                        pane.getContent().getLayoutBounds().getHeight()
                                - pane.getViewportBounds().getHeight();
                pane.setVvalue(Math.max(0, Math.min(1, at.getMinY() / Math.max(1, room))));
            }
        }
    }

    static void key(Node node, KeyCode code) {
        for (var kind : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
            Event.fireEvent(node, new KeyEvent(kind, "", "", code, false, false, false, false));
        }
    }

    /**
     * Draws a straight stroke over a node from left below to right above, in shares of its size.
     */
    static void stroke(Node node) {
        Bounds box = node.getLayoutBounds();
        int parts = 24;
        for (int i = 0; i <= parts; i++) {
            double share = 0.2 + 0.7 * i / parts;
            double x = box.getWidth() * share;
            double y = box.getHeight() * (0.9 - 0.7 * i / parts);
            mouse(node, i == 0 ? MouseEvent.MOUSE_PRESSED : MouseEvent.MOUSE_DRAGGED, x, y);
            if (i == parts) {
                mouse(node, MouseEvent.MOUSE_RELEASED, x, y);
            }
        }
    }

    private static void mouse(
            Node node, javafx.event.EventType<MouseEvent> kind, double x, double y) {
        var at = node.localToScene(x, y);
        Event.fireEvent(
                node,
                new MouseEvent(
                        kind,
                        at.getX(),
                        at.getY(),
                        at.getX(),
                        at.getY(),
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        true,
                        false,
                        true,
                        null));
    }

    /** All words that can be seen on a node. */
    static String words(Node node) {
        return Hands.all(node)
                .filter(Hands::isSeen)
                .filter(one -> one instanceof Labeled || one instanceof javafx.scene.text.Text)
                .map(
                        one ->
                                one instanceof Labeled label
                                        ? label.getText()
                                        : ((javafx.scene.text.Text) one).getText())
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
