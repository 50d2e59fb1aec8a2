package coldwright.desk.figure;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;

import java.util.ArrayList;
import java.util.List;

/** The buttons under a figure; where there is little room, they are behind one button. */
final class FigureActions extends FlowPane {
    private static final double NARROW_EM = 21;

    private final FigureSettings room;
    private final Button more = word("figure.more", this::open);
    private final List<Button> all = new ArrayList<>();
    private final List<Button> wanted = new ArrayList<>();
    private boolean opened;

    FigureActions(FigureSettings room) {
        this.room = room;
        getStyleClass().add("figure-buttons");
        TextControls.show(more, false);
        getChildren().add(more);
        widthProperty().addListener(value -> arrange());
    }

    /** Adds a button, which is shown while it is wanted. */
    Button add(String key, Runnable action) {
        Button button = word(key, action);
        all.add(button);
        wanted.add(button);
        getChildren().add(button);
        return button;
    }

    private static Button word(String key, Runnable action) {
        Button button = TextControls.button(Messages.of(key), action);
        button.getStyleClass().addAll("quiet-word", "figure-button");
        return button;
    }

    void want(Button button, boolean is) {
        if (is != wanted.contains(button)) {
            if (is) {
                wanted.add(button);
            } else {
                wanted.remove(button);
            }
            arrange();
        }
    }

    private void open() {
        opened = true;
        arrange();
        all.stream().filter(wanted::contains).findFirst().ifPresent(Button::requestFocus);
    }

    private void arrange() {
        boolean narrow = getWidth() > 0 && getWidth() < NARROW_EM * room.emPx().get();
        boolean folded = narrow && !opened;
        TextControls.show(more, folded);
        all.forEach(one -> TextControls.show(one, !folded && wanted.contains(one)));
    }
}
