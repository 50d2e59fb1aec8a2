package coldwright.desk.page;

import coldwright.desk.model.TypeSize;

import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

import java.util.function.IntConsumer;

/** What the keyboard does anywhere in the window. */
final class Keys {
    private final TypeSize typeSize;
    private final Runnable openFile;
    private final Runnable contents;
    private final IntConsumer turn;

    /**
     * Takes what the keys do.
     *
     * @param typeSize for Control and plus, minus, 0
     * @param openFile for Control and O
     * @param contents for F6
     * @param turn for Alt and Page Down (1) or Page Up (−1)
     */
    Keys(TypeSize typeSize, Runnable openFile, Runnable contents, IntConsumer turn) {
        this.typeSize = typeSize;
        this.openFile = openFile;
        this.contents = contents;
        this.turn = turn;
    }

    /** Does what a key means, if it means anything. */
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
        if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof ButtonBase word) {
            return word::fire;
        }
        if (event.getCode() == KeyCode.F6) {
            return contents;
        }
        if (event.isAltDown() && event.getCode() == KeyCode.PAGE_DOWN) {
            return () -> turn.accept(1);
        }
        if (event.isAltDown() && event.getCode() == KeyCode.PAGE_UP) {
            return () -> turn.accept(-1);
        }
        return null;
    }
}
