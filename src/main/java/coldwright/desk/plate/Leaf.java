package coldwright.desk.plate;

import coldwright.desk.model.DataTable;
import coldwright.desk.model.PlateModel;
import coldwright.desk.say.Words;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What is folded under a plate: the figure in words, or as a table, or a sentence to say. */
final class Leaf extends VBox {
    private final PlateModel model;
    private final PlateRoom room;
    private final Label words = Words.label("", "plate-described");
    private final Label said = Words.label("", "note");
    private boolean tabled;

    Leaf(PlateModel model, PlateRoom room) {
        this.model = model;
        this.room = room;
        getStyleClass().add("plate-leaf");
        words.setFocusTraversable(true);
        Words.show(words, false);
        Words.show(said, false);
        Words.show(this, false);
        getChildren().addAll(said, words);
    }

    /** The figure has changed: what was said of the one before is past, a table is set anew. */
    void changed() {
        if (said.isManaged()) {
            Words.show(said, false);
            refold();
        }
    }

    /** The figure in words. */
    void described(String text) {
        if (!text.equals(words.getText())) {
            words.setText(text);
        }
        if (tabled) {
            getChildren().remove(2);
            getChildren().add(table());
        }
    }

    /** Says one sentence. */
    void say(String sentence) {
        said.setText(sentence);
        Words.show(said, true);
        refold();
    }

    /** Shows the figure in words, or folds them away. */
    void turnWords() {
        Words.show(words, !words.isManaged());
        refold();
    }

    /** Shows the data as a table, or folds it away. */
    void turnTable() {
        if (tabled) {
            getChildren().remove(2);
        } else {
            getChildren().add(table());
        }
        tabled = !tabled;
        refold();
        if (tabled) {
            getChildren().get(2).requestFocus();
        }
    }

    private TableSheet table() {
        return new TableSheet(DataTable.of(model.drawn().shown()), room.emPx().get());
    }

    private void refold() {
        Words.show(this, tabled || words.isManaged() || said.isManaged());
    }
}
