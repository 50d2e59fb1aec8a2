package coldwright.desk.lesson;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.print.HandoutEdition;
import coldwright.print.PaperSize;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;

/** Prints the lesson: edition and paper size. */
final class HandoutView extends VBox {
    /** Countries that print on Letter (from memory). */
    private static final Set<String> LETTER =
            Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE", "GT", "CR", "PR");

    private final RadioButton a4 = new RadioButton(Messages.of("handout.a4"));
    private final RadioButton letter = new RadioButton(Messages.of("handout.letter"));

    /** {@code handout} asks for a file, and writes the handout. */
    HandoutView(Consumer<HandoutRequest> handout) {
        getStyleClass().add("handout");
        ToggleGroup papers = new ToggleGroup();
        papers.getToggles().setAll(a4, letter);
        papers.selectToggle(LETTER.contains(Locale.getDefault().getCountry()) ? letter : a4);
        getChildren()
                .addAll(
                        TextControls.label(Messages.of("handout.what"), "note"),
                        row(a4, letter),
                        row(
                                word(handout, "reader", HandoutEdition.READER, false),
                                word(handout, "blank", HandoutEdition.BLANK, false),
                                word(handout, "answers", HandoutEdition.ANSWERS, false),
                                word(handout, "work", HandoutEdition.READER, true)));
    }

    private Node word(
            Consumer<HandoutRequest> handout,
            String name,
            HandoutEdition edition,
            boolean withWork) {
        return TextControls.button(
                Messages.of("handout." + name),
                () ->
                        handout.accept(
                                new HandoutRequest(
                                        edition,
                                        letter.isSelected() ? PaperSize.LETTER : PaperSize.A4,
                                        withWork)));
    }

    private static Node row(Node... nodes) {
        FlowPane row = TextControls.styled(new FlowPane(12, 4, nodes), "number-row");
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }
}
