package coldwright.desk.plate;

import coldwright.desk.model.DataTable;
import coldwright.desk.model.PlateModel;
import coldwright.desk.say.Words;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What is folded under a plate: the figure in words, or as a table, or a sentence to say. */
final class Leaf extends VBox {
    private final PlateModel model;
    private final TableSheet table;
    private final Label words = Words.label("", "plate-described");
    private final Label said = Words.label("", "note");
    private boolean tabled;

    Leaf(PlateModel model, PlateRoom room) {
        this.model = model;
        this.table = new TableSheet(room.emPx());
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
            table.show(DataTable.of(model.drawn().shown()));
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
            getChildren().remove(table);
        } else {
            table.show(DataTable.of(model.drawn().shown()));
            getChildren().add(table);
        }
        tabled = !tabled;
        refold();
        if (tabled) {
            table.requestFocus();
        }
    }

    private void refold() {
        Words.show(this, tabled || words.isManaged() || said.isManaged());
    }
}
