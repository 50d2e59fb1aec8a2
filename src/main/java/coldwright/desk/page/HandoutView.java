package coldwright.desk.page;

import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.print.Edition;
import coldwright.print.Paper;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;

/** The lesson on paper: for whom, and on which sheet. */
final class HandoutView extends VBox {
    /** Countries that print on Letter (from memory). */
    private static final Set<String> LETTER =
            Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE", "GT", "CR", "PR");

    private final RadioButton a4 = new RadioButton(Say.of("handout.a4"));
    private final RadioButton letter = new RadioButton(Say.of("handout.letter"));

    /**
     * Offers it.
     *
     * @param handout asks where to, and writes it
     */
    HandoutView(Consumer<HandoutChoice> handout) {
        getStyleClass().add("handout");
        ToggleGroup papers = new ToggleGroup();
        papers.getToggles().setAll(a4, letter);
        papers.selectToggle(LETTER.contains(Locale.getDefault().getCountry()) ? letter : a4);
        getChildren()
                .addAll(
                        Words.label(Say.of("handout.what"), "note"),
                        row(a4, letter),
                        row(
                                word(handout, "reader", Edition.READER, false),
                                word(handout, "blank", Edition.BLANK, false),
                                word(handout, "answers", Edition.ANSWERS, false),
                                word(handout, "work", Edition.READER, true)));
    }

    private Node word(
            Consumer<HandoutChoice> handout, String name, Edition edition, boolean withWork) {
        return Words.button(
                Say.of("handout." + name),
                () ->
                        handout.accept(
                                new HandoutChoice(
                                        edition,
                                        letter.isSelected() ? Paper.LETTER : Paper.A4,
                                        withWork)));
    }

    private static Node row(Node... nodes) {
        FlowPane row = new FlowPane(12, 4, nodes);
        row.setAlignment(Pos.BASELINE_LEFT);
        row.getStyleClass().add("number-row");
        return row;
    }
}
