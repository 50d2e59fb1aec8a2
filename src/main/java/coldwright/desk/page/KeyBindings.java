package coldwright.desk.page;

import coldwright.desk.model.PreferencesModel;

import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Keys that work anywhere in the window. {@code back} is empty where there is no page to go back
 * to; {@code turn} takes 1 for Page Down and −1 for Page Up.
 */
record KeyBindings(
        PreferencesModel type,
        Runnable openFile,
        Runnable classroom,
        Runnable fullScreen,
        Runnable contents,
        Runnable escape,
        Supplier<Optional<Runnable>> back,
        IntConsumer turn) {

    /** Listens in the window that a node is in, for as long as it is there. */
    void listen(Node node) {
        EventHandler<KeyEvent> handler = this::pressed;
        node.sceneProperty()
                .subscribe(
                        (was, is) -> {
                            if (was != null) {
                                was.removeEventFilter(KeyEvent.KEY_PRESSED, handler);
                            }
                            if (is != null) {
                                is.addEventFilter(KeyEvent.KEY_PRESSED, handler);
                            }
                        });
    }

    /** Runs the action of a key, if it has one. */
    private void pressed(KeyEvent event) {
        Runnable action = event.isShortcutDown() ? shortcut(event.getCode()) : other(event);
        if (action != null) {
            event.consume();
            action.run();
        }
    }

    private Runnable shortcut(KeyCode code) {
        return switch (code) {
            case PLUS, EQUALS, ADD -> type::largerType;
            case MINUS, SUBTRACT -> type::smallerType;
            case DIGIT0, NUMPAD0 -> type::usualType;
            case O -> openFile;
            default -> null;
        };
    }

    private Runnable other(KeyEvent event) {
        return switch (event.getCode()) {
            case ENTER -> event.getTarget() instanceof ButtonBase word ? word::fire : null;
            case F9 -> classroom;
            case F6 -> contents;
            case F11 -> fullScreen;
            case ESCAPE -> escape;
            case LEFT -> event.isAltDown() ? back.get().orElse(null) : null;
            case PAGE_DOWN -> event.isAltDown() ? () -> turn.accept(1) : null;
            case PAGE_UP -> event.isAltDown() ? () -> turn.accept(-1) : null;
            default -> null;
        };
    }
}
