package coldwright.desk.page;

import coldwright.desk.glossary.TermFinder;
import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.prose.ProseView;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonStep;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The kitchen trials that need no machine, to read and to cook by. The page has the form of a
 * lesson, but nothing on it runs: the Java that checks its numbers is folded, as plain text.
 */
final class KitchenTrialsView extends ScrollPage {
    private static final String PAGE = "/docs/kitchen-trials.md";

    private final DeskModel desk;
    private final Consumer<String> openLink;
    private final TermFinder terms = new TermFinder();

    KitchenTrialsView(DeskModel desk, Consumer<String> openLink) {
        super("trials");
        this.desk = desk;
        this.openLink = openLink;
        Lesson page = page();
        add(
                TextControls.command("trials.back", desk::goHome),
                TextControls.label(page.title(), "lesson-title"));
        put(page.opening());
        for (LessonStep step : page.steps()) {
            Label title = TextControls.label(step.title(), "step-title");
            title.setAccessibleRole(AccessibleRole.TEXT);
            add(title);
            put(step.parts());
        }
        add(TextControls.command("trials.back", desk::goHome));
    }

    /** Whether the page is packaged with the program. */
    static boolean comesWithTheProgram() {
        return KitchenTrialsView.class.getResource(PAGE) != null;
    }

    private static Lesson page() {
        try (InputStream in = KitchenTrialsView.class.getResourceAsStream(PAGE)) {
            return LessonReader.read(PAGE, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void put(List<LessonPart> parts) {
        parts.forEach(part -> part.accept(new Writer()));
    }

    /** Ignores questions, checks and notes, which would need runs or a teacher. */
    private final class Writer implements LessonPart.Visitor {
        @Override
        public void prose(LessonPart.Prose prose) {
            add(new ProseView(prose.nodes(), KitchenTrialsView.this::follow, terms));
        }

        @Override
        public void snippet(LessonPart.Snippet snippet) {
            add(
                    new CollapsibleSection(
                            Messages.of("trials.java"),
                            Messages.of("trials.hide"),
                            () -> TextControls.literal(snippet.code(), "listing")));
        }

        @Override
        public void teacher(LessonPart.Teacher note) {}

        @Override
        public void prediction(LessonPart.Prediction prediction) {}

        @Override
        public void question(LessonPart.Question question) {}

        @Override
        public void check(LessonPart.Check check) {}
    }

    /** A link to a lesson opens it; any other opens as usual. */
    private void follow(String address) {
        lessonAt(address).ifPresentOrElse(desk::open, () -> openLink.accept(address));
    }

    private Optional<LessonModel> lessonAt(String address) {
        String file = address.substring(address.lastIndexOf('/') + 1);
        return address.startsWith("../lessons/")
                ? desk.openLessons().named(file.replaceFirst("\\.md$", ""))
                : Optional.empty();
    }
}
