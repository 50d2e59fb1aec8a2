package coldwright.desk.layout;

import javafx.beans.Observable;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.util.Subscription;

import java.util.List;

/**
 * Follows values only while a node is in a window. A value that lives longer than the node
 * therefore doesn't keep the node in memory.
 */
public final class WhileShown {
    private WhileShown() {}

    /** Runs an action when the node enters a window, and at each change until it leaves. */
    public static void follow(Node node, Runnable action, Observable... values) {
        follow(node, action, action, List.of(values));
    }

    /** Runs an action at each change while the node is in a window. */
    public static void changes(Node node, Runnable action, Observable... values) {
        follow(node, () -> {}, action, List.of(values));
    }

    private static void follow(
            Node node, Runnable enters, Runnable action, List<Observable> values) {
        Subscription[] kept = {Subscription.EMPTY};
        node.sceneProperty()
                .subscribe(
                        (was, is) -> {
                            if (was == null && is != null) {
                                kept[0] =
                                        values.stream()
                                                .map(one -> each(one, action))
                                                .reduce(Subscription.EMPTY, Subscription::and);
                                enters.run();
                            } else if (is == null) {
                                kept[0].unsubscribe();
                            }
                        });
    }

    private static Subscription each(Observable value, Runnable action) {
        return value instanceof ObservableValue<?> one
                ? one.subscribe((was, is) -> action.run())
                : value.subscribe(action);
    }
}
