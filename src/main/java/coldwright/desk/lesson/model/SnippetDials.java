package coldwright.desk.lesson.model;

import coldwright.bench.compile.SnippetSource;
import coldwright.lesson.Dial;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The dials of one snippet, kept in step with its text. */
final class SnippetDials {
    private final SnippetModel snippet;
    private final ObservableList<DialModel> all = FXCollections.observableArrayList();

    /** The text that is compiled: with the initial numbers of its dials. */
    private String compiledText = "";

    private List<Dial> compiledDials = List.of();

    SnippetDials(SnippetModel snippet) {
        this.snippet = snippet;
    }

    /** Reads them from the text; dials that exist already keep their models. */
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
        if (!same
                || !withoutNumbers(text, now).equals(withoutNumbers(compiledText, compiledDials))) {
            compiledText = text;
            compiledDials = now;
        }
    }

    private static String withoutNumbers(String text, List<Dial> dials) {
        StringBuilder rest = new StringBuilder(text);
        for (int i = dials.size() - 1; i >= 0; i--) {
            rest.delete(dials.get(i).start(), dials.get(i).end());
        }
        return rest.toString();
    }

    /** The source to run: the text with the current positions of the dials. */
    SnippetSource present(String text) {
        return source(written(text), dial -> dial.value().get());
    }

    /** The source to run: the text with the positions written in it. */
    SnippetSource rested(String text) {
        return source(text, dial -> dial.dial().value());
    }

    private SnippetSource source(String text, ToDoubleFunction<DialModel> position) {
        Map<Integer, Double> values = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            double value = position.applyAsDouble(all.get(i));
            if (value != compiledDials.get(i).value()) {
                values.put(compiledDials.get(i).start(), value);
            }
        }
        return new SnippetSource(text, compiledText, values);
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
