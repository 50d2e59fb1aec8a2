package coldwright.desk.page;

import coldwright.desk.model.TypeSize;

import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Keys that work anywhere in the window.
 *
 * @param typeSize for Control and plus, minus, 0
 * @param openFile for Control and O
 * @param classroom for F9
 * @param fullScreen for F11
 * @param contents for F6
 * @param closeContents for Escape, also where it goes back
 * @param back for Alt and Left; empty where there is no page to go back to
 * @param turn for Alt and Page Down (1) or Page Up (−1)
 */
record KeyBindings(
        TypeSize typeSize,
        Runnable openFile,
        Runnable classroom,
        Runnable fullScreen,
        Runnable contents,
        Runnable closeContents,
        Supplier<Optional<Runnable>> back,
        IntConsumer turn) {

    /** Runs the action of a key, if it has one. */
    void pressed(KeyEvent event) {
        Runnable action = event.isShortcutDown() ? shortcut(event.getCode()) : other(event);
        if (action != null) {
            event.consume();
            action.run();
        }
    }

    private Runnable shortcut(KeyCode code) {
        return switch (code) {
            case PLUS, EQUALS, ADD -> typeSize::larger;
            case MINUS, SUBTRACT -> typeSize::smaller;
            case DIGIT0, NUMPAD0 -> typeSize::usual;
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
            case ESCAPE -> closeContents;
            case LEFT -> event.isAltDown() ? back.get().orElse(null) : null;
            case PAGE_DOWN -> event.isAltDown() ? () -> turn.accept(1) : null;
            case PAGE_UP -> event.isAltDown() ? () -> turn.accept(-1) : null;
            default -> null;
        };
    }
}
