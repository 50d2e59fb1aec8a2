package coldwright.desk.messages;

import coldwright.desk.glossary.GlossaryTerm;
import coldwright.desk.glossary.TermEvent;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A term in a text: a quiet link to its meaning. */
public final class TermLink extends Hyperlink {
    public TermLink(String words, GlossaryTerm term) {
        super(words);
        getStyleClass().setAll("term");
        setAccessibleHelp(Messages.of("glossary.term-help"));
        setOnAction(event -> fireEvent(new TermEvent(term)));
    }

    /** Makes a label that is a term a link to its meaning. */
    static void on(Label label, GlossaryTerm term) {
        label.getStyleClass().add("term");
        label.setFocusTraversable(true);
        label.setAccessibleRole(AccessibleRole.HYPERLINK);
        label.setAccessibleHelp(Messages.of("glossary.term-help"));
        label.setOnMouseClicked(event -> label.fireEvent(new TermEvent(term)));
        label.addEventHandler(
                KeyEvent.KEY_PRESSED,
                event -> {
                    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
                        event.consume();
                        label.fireEvent(new TermEvent(term));
                    }
                });
    }
}
