package coldwright.desk.page;

import coldwright.desk.glossary.Glossary;
import coldwright.desk.glossary.GlossaryTerm;
import coldwright.desk.glossary.TermFinder;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.prose.ProseView;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonStep;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/** All terms of the glossary, with a search. */
final class GlossaryView extends ScrollPage {
    private final DeskModel desk;
    private final Map<GlossaryTerm, Node> entries = new LinkedHashMap<>();
    private final VBox list = TextControls.styled(new VBox(), "glossary-list");
    private final TextField search = new TextField();
    private final Label none = TextControls.label(Messages.of("glossary.none"), "note");

    /** Searches at first for {@code wanted}; empty for all terms. */
    GlossaryView(DeskModel desk, Consumer<String> openLink, String wanted) {
        super("glossary");
        this.desk = desk;
        search.setPromptText(Messages.of("glossary.search"));
        search.setAccessibleText(Messages.of("glossary.search"));
        search.textProperty().addListener((value, was, is) -> filter(is));
        add(TextControls.label(Messages.of("glossary"), "lesson-title"), search, none, list);
        TextControls.show(none, false);
        for (GlossaryTerm term : Glossary.ofThisProgram().terms()) {
            entries.put(term.shown(), entry(term.shown()));
        }
        list.getChildren().addAll(entries.values());
        LessonReader.read("glossary.md", Glossary.ofThisProgram().rest())
                .steps()
                .forEach(step -> addSection(step, openLink));
        search.setText(wanted);
        search.selectAll();
    }

    private void addSection(LessonStep step, Consumer<String> openLink) {
        add(TextControls.label(step.title(), "step-title"));
        for (LessonPart part : step.parts()) {
            if (part instanceof LessonPart.Prose prose) {
                add(new ProseView(prose.nodes(), openLink, new TermFinder()));
            }
        }
    }

    private Node entry(GlossaryTerm term) {
        VBox entry =
                new VBox(
                        TextControls.literal(term.name(), "term-name"),
                        new CodeSentence(term.meaning(), "term-meaning"),
                        new CodeSentence(
                                Messages.of("glossary.calculated", term.calculatedBy()),
                                "term-calculated"));
        entry.getStyleClass().add("term-entry");
        desk.openLessons()
                .named(term.lesson().orElse(""))
                .ifPresent(
                        lesson ->
                                entry.getChildren()
                                        .add(
                                                TextControls.button(
                                                        lesson.lesson().title(),
                                                        () -> desk.open(lesson))));
        return entry;
    }

    private void filter(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        list.getChildren().clear();
        entries.forEach(
                (term, entry) -> {
                    String text = term.name() + "\n" + term.meaning();
                    if (text.toLowerCase(Locale.ROOT).contains(wanted)) {
                        list.getChildren().add(entry);
                    }
                });
        TextControls.show(none, list.getChildren().isEmpty());
    }

    @Override
    public void requestFocus() {
        search.requestFocus();
    }
}
