package coldwright.desk.page;

import coldwright.desk.glossary.GlossaryTerm;
import coldwright.desk.glossary.TermEvent;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

/** The meaning of a term beside the word, with ways to its lesson and to all terms. */
final class TermPopover extends VBox {
    private static final double WIDTH_EM = 22;
    private static final double GAP_PX = 4;

    private final DeskModel desk;
    private final Pane over;
    private final ObservableValue<? extends Number> emPx;
    private Node from;

    /** Shows nothing yet; it will be shown over a pane, whose terms' events are handled here. */
    TermPopover(DeskModel desk, Pane over, ObservableValue<? extends Number> emPx) {
        this.emPx = emPx;
        this.desk = desk;
        this.over = over;
        getStyleClass().add("term-popover");
        setManaged(false);
        setAccessibleRole(AccessibleRole.PARENT);
        WhileShown.changes(this, this::place, over.widthProperty(), over.heightProperty(), emPx);
        over.addEventHandler(
                TermEvent.ASKED,
                event -> {
                    event.consume();
                    show(event.term().shown(), (Node) event.getTarget());
                });
    }

    private void show(GlossaryTerm term, Node word) {
        close();
        from = word;
        FlowPane links = TextControls.styled(new FlowPane(), "term-links");
        desk.openLessons()
                .named(term.lesson().orElse(""))
                .ifPresent(
                        lesson ->
                                links.getChildren()
                                        .add(
                                                link(
                                                        lesson.lesson().title(),
                                                        () -> desk.open(lesson))));
        Button all = link(Messages.of("glossary.all"), () -> desk.openGlossary(term.name()));
        links.getChildren().add(all);
        getChildren()
                .setAll(
                        TextControls.literal(term.name(), "term-name"),
                        new CodeSentence(term.meaning(), "term-meaning"),
                        links);
        setAccessibleText(term.name() + ". " + term.meaning());
        over.getChildren().add(this);
        place();
        links.getChildren().get(0).requestFocus();
    }

    private Button link(String words, Runnable action) {
        Button button =
                TextControls.button(
                        words,
                        () -> {
                            close();
                            action.run();
                        });
        button.setWrapText(true);
        button.setMinWidth(0);
        return button;
    }

    /** Below the word, or above it where there is more room; never beyond the window. */
    private void place() {
        applyCss();
        double em = emPx.getValue().doubleValue();
        double width = Math.min(WIDTH_EM * em, over.getWidth() - 2 * GAP_PX);
        double height = Math.min(prefHeight(width), over.getHeight() - 2 * GAP_PX);
        Bounds word = over.sceneToLocal(from.localToScene(from.getBoundsInLocal()));
        double x = Math.min(word.getMinX(), over.getWidth() - width - GAP_PX);
        double below = word.getMaxY() + GAP_PX;
        double y = below + height <= over.getHeight() ? below : word.getMinY() - GAP_PX - height;
        double highest = over.getHeight() - height - GAP_PX;
        resizeRelocate(Math.max(GAP_PX, x), Math.max(GAP_PX, Math.min(highest, y)), width, height);
    }

    /** Closes it. Returns whether it was shown; then the word has the focus again. */
    boolean close() {
        boolean shown = over.getChildren().remove(this);
        if (shown && from.getScene() != null) {
            from.requestFocus();
        }
        return shown;
    }

    /** Closes it if something outside of it is pressed. */
    void pressed(Object target) {
        boolean inside =
                target instanceof Node node
                        && TextControls.around(node).anyMatch(one -> one == this);
        if (!inside) {
            over.getChildren().remove(this);
        }
    }
}
