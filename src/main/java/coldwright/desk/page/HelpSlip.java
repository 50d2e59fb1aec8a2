package coldwright.desk.page;

import coldwright.desk.code.CodeSlip;
import coldwright.desk.model.SnippetModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.help.Entry;
import coldwright.help.HelpIndex;
import coldwright.help.Suggestion;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Optional;

/** Help on the word under the caret, laid under the snippet. */
final class HelpSlip extends VBox {
    private static final int MOST_SHOWN = 3;

    private final SnippetModel model;
    private final CodeSlip slip;

    HelpSlip(SnippetModel model, CodeSlip slip) {
        this.model = model;
        this.slip = slip;
        getStyleClass().add("help-slip");
        Words.show(this, false);
    }

    /** Shows help on the word under the caret, or puts it away if it is shown. */
    void turn() {
        if (isVisible()) {
            putAway();
            return;
        }
        String text = slip.getText();
        int caret = slip.getCaretPosition();
        int start = startOfWord(text, caret);
        boolean ofSomething = start > 0 && text.charAt(start - 1) == '.';
        if (!ofSomething) {
            show(HelpIndex.ofThisProgram().at(text, caret, Optional.empty()));
            return;
        }
        String name = text.substring(start, endOfWord(text, start));
        model.suggest(text, start)
                .thenAccept(found -> Platform.runLater(() -> show(entries(found, name))));
    }

    private static List<Entry> entries(List<Suggestion> found, String name) {
        return found.stream()
                .flatMap(one -> one.entry().stream())
                .filter(entry -> entry.name().equals(name))
                .flatMap(entry -> HelpIndex.ofThisProgram().of(entry.owner(), name).stream())
                .distinct()
                .toList();
    }

    private static int startOfWord(String text, int caret) {
        int start = Math.min(caret, text.length());
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static int endOfWord(String text, int start) {
        int end = start;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private void show(List<Entry> entries) {
        getChildren().clear();
        if (entries.isEmpty()) {
            getChildren().add(Words.label(Say.of("help.none"), "note"));
        }
        entries.stream().limit(MOST_SHOWN).forEach(this::add);
        getChildren().add(Words.button(Say.of("put-away"), this::putAway));
        Words.show(this, true);
    }

    private void add(Entry entry) {
        getChildren().add(Words.label(entry.signature(), "help-signature"));
        if (!entry.sentence().isEmpty()) {
            getChildren().add(new Sentence(entry.sentence(), "help-sentence"));
        }
        entry.parameters().forEach(line -> getChildren().add(new Sentence(line, "help-parameter")));
        if (!entry.returns().isEmpty()) {
            getChildren()
                    .add(new Sentence(Say.of("help.gives", entry.returns()), "help-parameter"));
        }
    }

    private void putAway() {
        Words.show(this, false);
        slip.requestFocus();
    }

    /** Puts help away, all that is shown within a page; says whether any was. */
    static boolean putAwayWithin(Node page) {
        List<HelpSlip> shown =
                page.lookupAll(".help-slip").stream()
                        .filter(HelpSlip.class::isInstance)
                        .map(HelpSlip.class::cast)
                        .filter(Node::isVisible)
                        .toList();
        boolean writing = page.getScene().getFocusOwner() instanceof CodeSlip;
        shown.forEach(one -> Words.show(one, false));
        if (!writing) {
            shown.stream().limit(1).forEach(HelpSlip::putAway);
        }
        return !shown.isEmpty();
    }
}
