package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureModel;
import coldwright.desk.figure.model.FigureTable;
import coldwright.desk.messages.TextControls;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The folded part under a figure: a description, a table, or a message. */
final class FigureDetails extends VBox {
    private final FigureModel model;
    private final FigureTableView table;
    private final Label words = TextControls.label("", "figure-description");
    private final Label message = TextControls.label("", "note");
    private boolean tabled;

    FigureDetails(FigureModel model, FigureSettings room) {
        this.model = model;
        this.table = new FigureTableView(room.emPx());
        getStyleClass().add("figure-details");
        words.setFocusTraversable(true);
        TextControls.show(words, false);
        TextControls.show(message, false);
        TextControls.show(this, false);
        getChildren().addAll(message, words);
    }

    /** The figure has changed: hides the message. */
    void changed() {
        if (message.isManaged()) {
            TextControls.show(message, false);
            refold();
        }
    }

    void described(String text) {
        if (!text.equals(words.getText())) {
            words.setText(text);
        }
        if (tabled) {
            table.show(FigureTable.of(model.drawn().shown()));
        }
    }

    void say(String sentence) {
        message.setText(sentence);
        TextControls.show(message, true);
        refold();
    }

    void turnWords() {
        TextControls.show(words, !words.isManaged());
        refold();
    }

    /** Shows or hides the data as a table. */
    void turnTable() {
        if (tabled) {
            getChildren().remove(table);
        } else {
            table.show(FigureTable.of(model.drawn().shown()));
            getChildren().add(table);
        }
        tabled = !tabled;
        refold();
        if (tabled) {
            table.requestFocus();
        }
    }

    private void refold() {
        TextControls.show(this, tabled || words.isManaged() || message.isManaged());
    }
}
