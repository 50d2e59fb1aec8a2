package coldwright.desk.brew;

import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.brew.model.Differences;
import coldwright.desk.brew.model.Story;
import coldwright.desk.brew.model.Tasting;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.science.diagnosis.Symptom;

import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The batches in their row: from which each was made, what was changed, what was found. */
final class HistoryView extends VBox {
    private final BrewModel brew;
    private final Button back;
    private final VBox rows = new VBox();
    private final InvalidationListener listener = value -> refresh();
    private final Set<BatchModel> heard = new HashSet<>();

    HistoryView(BrewModel brew) {
        this.brew = brew;
        getStyleClass().add("brew-part");
        rows.getStyleClass().add("brew-part");
        back = quiet("", brew::bringBack);
        Words.show(back, false);
        getChildren().addAll(Fields.heading("batch.history"), rows, back);
        brew.away().addListener((value, was, is) -> offer(is));
        brew.batches().addListener(listener);
        brew.open().addListener(listener);
        brew.against().addListener(listener);
        refresh();
    }

    private void offer(Optional<BrewModel.Away> last) {
        last.ifPresent(
                one ->
                        back.setText(
                                Say.of(
                                        "batch.history.back",
                                        String.valueOf(one.batch().story().get().number()),
                                        one.batch().recipe().get().name())));
        Words.show(back, last.isPresent());
    }

    private void refresh() {
        for (BatchModel batch : brew.batches()) {
            if (heard.add(batch)) {
                batch.story().addListener(listener);
                batch.recipe().addListener(listener);
            }
        }
        Optional<Place> focused = focused();
        rows.getChildren().setAll(brew.batches().stream().map(this::row).toList());
        focused.ifPresent(this::focus);
    }

    /** Which word of which row has the keyboard; what is made anew must not lose it. */
    private Optional<Place> focused() {
        for (int row = 0; row < rows.getChildren().size(); row++) {
            List<Node> words = words(row);
            for (int word = 0; word < words.size(); word++) {
                if (words.get(word).isFocused()) {
                    return Optional.of(new Place(row, word));
                }
            }
        }
        return Optional.empty();
    }

    private void focus(Place place) {
        if (place.row < rows.getChildren().size()) {
            List<Node> words = words(place.row);
            words.get(Math.min(place.word, words.size() - 1)).requestFocus();
        }
    }

    private List<Node> words(int row) {
        return ((FlowPane) ((VBox) rows.getChildren().get(row)).getChildren().get(0)).getChildren();
    }

    /** Whether one of its words has the keyboard. */
    boolean hasKeyboard() {
        return focused().isPresent();
    }

    private record Place(int row, int word) {}

    private Node row(BatchModel batch) {
        Story story = batch.story().get();
        boolean here = batch.equals(brew.open().get());
        Button open =
                Words.button(
                        Say.of(
                                "batch.history.batch",
                                String.valueOf(story.number()),
                                batch.recipe().get().name()),
                        () -> brew.open(batch));
        FlowPane words = new FlowPane(open);
        words.getStyleClass().add("brew-choices");
        VBox row = new VBox(words);
        row.getStyleClass().add("brew-batch");
        if (here) {
            row.getStyleClass().add("here");
            open.setAccessibleText(open.getText() + ", " + Say.of("batch.history.open"));
        } else {
            boolean held = brew.against().get().filter(batch::equals).isPresent();
            String hold = Say.of(held ? "batch.history.let-go" : "batch.history.hold");
            Optional<BatchModel> then = held ? Optional.empty() : Optional.of(batch);
            words.getChildren()
                    .addAll(
                            quiet(hold, () -> brew.against().set(then)),
                            quiet(Say.of("batch.history.away"), () -> brew.close(batch)));
        }
        brew.before(batch).ifPresent(from -> row.getChildren().add(made(from, batch)));
        if (!story.taken().isEmpty()) {
            String taken = String.join(" ", story.taken());
            row.getChildren().add(Words.label(Say.of("batch.history.taken", taken), "brew-why"));
        }
        if (!story.found().isEmpty()) {
            row.getChildren()
                    .add(Words.label(Say.of("batch.history.found", found(story)), "brew-why"));
        }
        return row;
    }

    private static Button quiet(String word, Runnable action) {
        Button button = Words.button(word, action);
        button.getStyleClass().add("quiet-word");
        return button;
    }

    private static Node made(BatchModel from, BatchModel batch) {
        List<String> changed = Differences.between(from.recipe().get(), batch.recipe().get());
        String what = changed.isEmpty() ? Say.of("batch.history.same") : String.join("; ", changed);
        String number = String.valueOf(from.story().get().number());
        String why = batch.story().get().why();
        return Words.label(
                why.isEmpty()
                        ? Say.of("batch.history.made", number, what)
                        : Say.of("batch.history.made-for", number, why, what),
                "brew-why");
    }

    private static String found(Story story) {
        return story.found().stream()
                .map(
                        one -> {
                            try {
                                return Tasting.words(Symptom.named(one));
                            } catch (IllegalArgumentException e) {
                                return one;
                            }
                        })
                .collect(Collectors.joining(", "));
    }
}
