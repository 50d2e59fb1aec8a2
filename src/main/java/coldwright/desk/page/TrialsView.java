package coldwright.desk.page;

import coldwright.desk.model.DeskModel;
import coldwright.desk.model.LessonModel;
import coldwright.desk.prose.ProseView;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.lesson.Part;
import coldwright.lesson.Step;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The kitchen trials that need no machine, to read and to cook by. The page is a lesson in form,
 * but nothing on it runs: the Java that its numbers are held to stays folded, as plain text.
 */
final class TrialsView extends ScrollPane {
    private static final String PAGE = "/docs/kitchen-trials.md";

    private final DeskModel desk;
    private final Consumer<String> openLink;
    private final VBox column = new VBox();

    TrialsView(DeskModel desk, Consumer<String> openLink) {
        this.desk = desk;
        this.openLink = openLink;
        Lesson page = page();
        getStyleClass().addAll("reading", "trials");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        column.getStyleClass().addAll("column", "trials-column");
        Button back = Words.button(Say.of("trials.back"), desk::goHome);
        column.getChildren().addAll(back, Words.label(Typography.of(page.title()), "lesson-title"));
        put(page.opening());
        for (Step step : page.steps()) {
            Label title = Words.label(Typography.of(step.title()), "step-title");
            title.setAccessibleRole(AccessibleRole.TEXT);
            column.getChildren().add(title);
            put(step.parts());
        }
        column.getChildren().add(Words.button(Say.of("trials.back"), desk::goHome));
        StackPane sheet = new StackPane(column);
        sheet.getStyleClass().add("sheet");
        setContent(sheet);
    }

    /** Whether the page was packaged with the program. */
    static boolean comesWithTheProgram() {
        return TrialsView.class.getResource(PAGE) != null;
    }

    private static Lesson page() {
        try (InputStream in = TrialsView.class.getResourceAsStream(PAGE)) {
            return LessonReader.read(PAGE, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void put(List<Part> parts) {
        for (Part part : parts) {
            if (part instanceof Part.Prose prose) {
                column.getChildren().add(new ProseView(prose.nodes(), this::follow));
            } else if (part instanceof Part.Snippet snippet) {
                column.getChildren()
                        .add(
                                new Folded(
                                        Say.of("trials.java"),
                                        Say.of("trials.fold"),
                                        () -> Words.label(snippet.code(), "listing")));
            }
        }
    }

    /** A link to a lesson opens it; any other goes where links go. */
    private void follow(String address) {
        lessonAt(address).ifPresentOrElse(desk::open, () -> openLink.accept(address));
    }

    private Optional<LessonModel> lessonAt(String address) {
        String file = address.substring(address.lastIndexOf('/') + 1);
        return desk.lessons().stream()
                .filter(
                        one ->
                                address.startsWith("../lessons/")
                                        && one.key().name().concat(".md").equals(file))
                .findFirst();
    }
}
