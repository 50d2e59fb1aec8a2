package coldwright.desk.batch;

import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.PasteModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.recipe.LineReading;
import coldwright.science.mix.Ingredient;
import coldwright.words.Phrase;

import javafx.scene.control.TextArea;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Takes a pasted recipe: shows what each line was understood as, with buttons to decide. */
final class PasteRecipeView extends VBox {
    private static final int ROWS = 6;

    private final TextArea text = new TextArea();
    private final VBox lines = new VBox();
    private final PasteModel model = new PasteModel();

    /**
     * Makes a form, collapsed.
     *
     * @param own the cook's own ingredients now
     * @param take receives the lines and the notes
     */
    PasteRecipeView(Supplier<Collection<Ingredient>> own, Consumer<PasteModel> take) {
        getStyleClass().add("brew-own");
        text.setPromptText(Messages.of("batch.paste.prompt"));
        text.setAccessibleText(Messages.of("batch.paste.prompt"));
        text.setPrefRowCount(ROWS);
        text.setWrapText(true);
        text.textProperty()
                .addListener(
                        value -> {
                            model.read(text.getText(), own.get());
                            refresh();
                        });
        FlowPane actions =
                new FlowPane(
                        TextControls.button(
                                Messages.of("batch.paste.take"),
                                () -> {
                                    if (!model.all().isEmpty()) {
                                        take.accept(model);
                                        text.clear();
                                    }
                                }));
        VBox part =
                new VBox(
                        TextControls.label(Messages.of("batch.paste.how"), "note"),
                        text,
                        lines,
                        actions);
        part.getStyleClass().add("brew-slip");
        getChildren()
                .add(InputFields.unfolding(Messages.of("batch.paste"), part, text::requestFocus));
    }

    private void refresh() {
        lines.getChildren().clear();
        List<LineReading> read = model.pasted().lines();
        for (int i = 0; i < read.size(); i++) {
            lines.getChildren().add(line(i, read.get(i)));
        }
    }

    private VBox line(int index, LineReading read) {
        String understood =
                model.rows(index).stream()
                        .filter(RecipeLine::counts)
                        .map(row -> row.name() + " = " + mass(row))
                        .collect(Collectors.joining(", "));
        VBox box = new VBox(TextControls.literal(read.text(), "brew-why"));
        if (model.isDecided(index)) {
            String how =
                    read.parts().stream()
                            .map(part -> part.how().shown())
                            .collect(Collectors.joining(", "));
            box.getChildren()
                    .add(
                            TextControls.literal(
                                    how.isEmpty() ? understood : understood + " (" + how + ")",
                                    "brew-grams"));
            return box;
        }
        read.why()
                .ifPresent(
                        why ->
                                box.getChildren()
                                        .add(TextControls.label(why.shown(), "brew-fault")));
        box.getChildren()
                .add(
                        InputFields.choices(
                                read.choices(),
                                choice -> decide(() -> model.choose(index, choice)),
                                read.suggestions(),
                                one -> decide(() -> model.choose(index, one))));
        return box;
    }

    private void decide(Runnable choice) {
        choice.run();
        refresh();
    }

    private static String mass(RecipeLine row) {
        return row.weighs().map(Phrase::shown).orElse(row.amount().text());
    }
}
