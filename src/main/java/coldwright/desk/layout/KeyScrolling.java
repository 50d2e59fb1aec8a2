package coldwright.desk.layout;

import coldwright.desk.messages.TextControls;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;

/** Pages that are scrolled by keys. */
public final class KeyScrolling {
    private KeyScrolling() {}

    /**
     * What a key scrolls away loses the focus, so that the next key acts on what is seen.
     *
     * @param page what scrolls
     * @param takeFocus gives the focus to the page
     */
    public static void keepFocusInView(ScrollPane page, Runnable takeFocus) {
        page.addEventHandler(
                KeyEvent.KEY_PRESSED,
                event ->
                        Platform.runLater(
                                () -> {
                                    if (isAway(page)) {
                                        takeFocus.run();
                                    }
                                }));
    }

    private static boolean isAway(ScrollPane page) {
        Node focused = page.getScene() == null ? null : page.getScene().getFocusOwner();
        return TextControls.around(focused).anyMatch(one -> one == page.getContent())
                && !TextControls.isSeen(focused, page);
    }
}
