package coldwright.desk.batch;

import coldwright.batch.RecipeLine;
import coldwright.science.mix.Shelf;

import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Suggests ingredient names under a field while the cook types. */
final class IngredientCompletion {
    private static final int MOST = 7;

    private final TextField field;
    private final Supplier<Collection<String>> own;
    private final Consumer<String> take;
    private final ContextMenu menu = new ContextMenu();

    /**
     * Attaches the list to a field.
     *
     * @param field where a name is typed
     * @param own names of the cook's own ingredients
     * @param take receives the chosen name
     */
    IngredientCompletion(TextField field, Supplier<Collection<String>> own, Consumer<String> take) {
        this.field = field;
        this.own = own;
        this.take = take;
        menu.getStyleClass().add("brew-names");
        menu.setAutoFix(true);
        field.focusedProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!is) {
                                menu.hide();
                            }
                        });
    }

    /** Offers the names that match the current text. */
    void offer() {
        List<String> names = fitting(field.getText(), own.get());
        boolean done = names.size() == 1 && names.get(0).equalsIgnoreCase(field.getText().strip());
        if (names.isEmpty() || done || !field.isFocused()) {
            menu.hide();
            return;
        }
        menu.getItems().setAll(names.stream().map(this::item).toList());
        if (!menu.isShowing()) {
            menu.show(field, Side.BOTTOM, 0, 0);
        }
    }

    private MenuItem item(String name) {
        MenuItem item = new MenuItem(name);
        item.setOnAction(event -> take.accept(name));
        return item;
    }

    /** First the exact meaning, then names that begin so, then names with a word that begins so. */
    static List<String> fitting(String typed, Collection<String> own) {
        String start = typed.strip().toLowerCase(Locale.ROOT);
        if (start.isEmpty()) {
            return List.of();
        }
        Stream<String> exact =
                new RecipeLine("", start)
                        .ingredient().value().map(one -> one.phrase().shown()).stream();
        Stream<String> beginning = matching(own, name -> name.startsWith(start));
        Stream<String> containing = matching(own, name -> name.contains(" " + start));
        return Stream.of(exact, beginning, containing)
                .flatMap(names -> names)
                .distinct()
                .limit(MOST)
                .toList();
    }

    /** Names with a match among their words: the cook's own, then those of the shelf. */
    private static Stream<String> matching(Collection<String> own, Predicate<String> match) {
        Predicate<String> fits = words -> match.test(words.toLowerCase(Locale.ROOT));
        return Stream.concat(
                own.stream().filter(fits),
                Shelf.all().stream()
                        .filter(
                                one ->
                                        fits.test(one.name())
                                                || one.aliases().stream().anyMatch(fits))
                        .map(one -> one.phrase().shown()));
    }
}
