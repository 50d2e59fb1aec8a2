package coldwright.desk.layout;

import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

import java.util.List;

/**
 * Follows values only while a node is in a window. A value that lives longer than the node
 * therefore doesn't keep the node in memory.
 */
public final class WhileShown {
    private WhileShown() {}

    /**
     * Runs an action when the node enters a window, and at each change of values and lists until it
     * leaves.
     */
    public static void follow(Node node, Runnable action, Observable... values) {
        follow(node, action, action, List.of(values));
    }

    /** Runs an action at each change while the node is in a window. */
    public static void changes(Node node, Runnable action, Observable... values) {
        follow(node, () -> {}, action, List.of(values));
    }

    private static void follow(
            Node node, Runnable enters, Runnable action, List<Observable> values) {
        ChangeListener<Object> changed = (value, was, is) -> action.run();
        InvalidationListener invalidated = value -> action.run();
        node.sceneProperty()
                .subscribe(
                        (was, is) -> {
                            if (was == null && is != null) {
                                values.forEach(one -> listen(one, changed, invalidated));
                                enters.run();
                            } else if (is == null) {
                                values.forEach(one -> ignore(one, changed, invalidated));
                            }
                        });
    }

    private static void listen(
            Observable value, ChangeListener<Object> changed, InvalidationListener invalidated) {
        if (value instanceof ObservableValue<?> one) {
            one.addListener(changed);
        } else {
            value.addListener(invalidated);
        }
    }

    private static void ignore(
            Observable value, ChangeListener<Object> changed, InvalidationListener invalidated) {
        if (value instanceof ObservableValue<?> one) {
            one.removeListener(changed);
        } else {
            value.removeListener(invalidated);
        }
    }
}
