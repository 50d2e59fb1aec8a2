package coldwright.desk.lesson.model;

import coldwright.lesson.Dial;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.List;

/** The dials of one snippet, kept in step with its text. */
final class SnippetDials {
    private final SnippetModel snippet;
    private final ObservableList<DialModel> all = FXCollections.observableArrayList();

    SnippetDials(SnippetModel snippet) {
        this.snippet = snippet;
    }

    /** Reads them from the text; those that stand already stay the same models. */
    void read(String text) {
        List<Dial> now = Dial.in(text);
        boolean same =
                now.stream()
                        .map(Dial::variable)
                        .toList()
                        .equals(all.stream().map(one -> one.dial().variable()).toList());
        if (same) {
            for (int i = 0; i < now.size(); i++) {
                all.get(i).take(now.get(i));
            }
        } else {
            List<DialModel> models = new ArrayList<>();
            now.forEach(dial -> models.add(new DialModel(snippet, dial)));
            all.setAll(models);
        }
    }

    /** The text with every position written into it. */
    String written(String text) {
        String written = text;
        for (int i = all.size() - 1; i >= 0; i--) {
            DialModel dial = all.get(i);
            if (dial.moved()) {
                written = dial.dial().written(written, dial.value().get());
            }
        }
        return written;
    }

    ObservableList<DialModel> all() {
        return all;
    }
}
