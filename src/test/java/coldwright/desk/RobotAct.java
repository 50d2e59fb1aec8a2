package coldwright.desk;

import coldwright.desk.code.CodeEditor;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.model.DeskModel;

import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One act of the robot.
 *
 * @param number chooses among what the page offers for it
 */
record RobotAct(Kind kind, int number) {
    enum Kind {
        TYPE,
        TYPE_NUMBER,
        PRESS,
        PRESS_AGAIN,
        KEY,
        DIAL,
        POINT,
        SCROLL,
        RESIZE,
        OPEN_LESSON,
        PAGE,
        CLASSROOM,
        STEP,
        NOTICE,
        RESTART
    }

    /** What the robot types into Java. */
    private static final List<String> TEXTS =
            List.of("1", " ", "\n", "?", "while", "show", "//", "\"", "ü", "top", ";", "/* ");

    private static final List<String> NUMBERS =
            List.of("3", "-2.5", "−2,5", "x", "", "1e400", " 7 ");

    private static final List<KeyCode> KEYS =
            List.of(
                    KeyCode.TAB,
                    KeyCode.ESCAPE,
                    KeyCode.ENTER,
                    KeyCode.SPACE,
                    KeyCode.LEFT,
                    KeyCode.RIGHT,
                    KeyCode.UP,
                    KeyCode.DOWN,
                    KeyCode.PAGE_UP,
                    KeyCode.PAGE_DOWN,
                    KeyCode.HOME,
                    KeyCode.END,
                    KeyCode.DELETE,
                    KeyCode.BACK_SPACE,
                    KeyCode.PLUS,
                    KeyCode.MINUS,
                    KeyCode.DIGIT0,
                    KeyCode.F1,
                    KeyCode.F6,
                    KeyCode.F9,
                    KeyCode.Z,
                    KeyCode.A);

    /** These ask for a file in a dialog of the system, or move the files away. */
    private static final Set<String> NOT_PRESSED =
            Set.of(
                    "open-file",
                    "home.own-lesson",
                    "hand-in.save",
                    "figure.save",
                    "figure.copy",
                    "handout.reader",
                    "handout.blank",
                    "handout.answers",
                    "handout.work",
                    "settings.archive",
                    "batch.file.open",
                    "batch.file.save",
                    "batch.file.sheet",
                    "batch.file.code");

    /** Does it, on the window's thread; nothing if the page has nothing for it. */
    void act(RobotWindow robot) {
        DeskModel desk = robot.window().desk();
        Parent root = robot.stage().getScene().getRoot();
        switch (kind) {
            case TYPE -> of(root, CodeEditor.class::isInstance).forEach(this::type);
            case TYPE_NUMBER -> of(root, TextField.class::isInstance).forEach(this::typeNumber);
            case PRESS, PRESS_AGAIN -> of(root, RobotAct::mayPress).forEach(RobotAct::press);
            case KEY -> key(robot);
            case DIAL -> of(root, Slider.class::isInstance).forEach(this::turn);
            case POINT ->
                    of(root, node -> has(node, "figure-canvas", "sketch-pad")).forEach(this::point);
            case SCROLL ->
                    of(root, ScrollPane.class::isInstance)
                            .forEach(node -> ((ScrollPane) node).setVvalue(number % 11 / 10.0));
            case RESIZE -> {
                robot.stage().setWidth(480 + number % 9 * 100);
                robot.stage().setHeight(360 + number / 9 % 5 * 100);
            }
            case OPEN_LESSON -> desk.open(desk.lessons().get(number % desk.lessons().size()));
            case PAGE -> page(desk);
            case CLASSROOM -> desk.toggleClassroom();
            case STEP -> {
                LessonModel lesson = desk.open().get();
                if (lesson != null) {
                    Event.fireEvent(
                            focus(robot),
                            event(
                                    KeyEvent.KEY_PRESSED,
                                    number % 2 == 0 ? KeyCode.PAGE_DOWN : KeyCode.PAGE_UP,
                                    false,
                                    true));
                }
            }
            case NOTICE -> desk.notify("A notice, number " + number + ".");
            case RESTART -> {}
        }
    }

    private void page(DeskModel desk) {
        switch (number % 5) {
            case 0 -> desk.goHome();
            case 1 -> desk.openBatches();
            case 2 -> desk.openGlossary(number % 2 == 0 ? "" : "overrun");
            case 3 -> desk.openSettings();
            default -> desk.openTrials();
        }
    }

    private Stream<Node> of(Parent root, Predicate<Node> wanted) {
        List<Node> all = shown(root).filter(wanted).collect(Collectors.toList());
        return all.isEmpty() ? Stream.of() : Stream.of(all.get(number % all.size()));
    }

    /** All nodes below one that are shown, in the order of the page. */
    static Stream<Node> shown(Node node) {
        if (!node.isVisible()) {
            return Stream.of();
        }
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        List.copyOf(parent.getChildrenUnmodifiable()).stream()
                                .flatMap(RobotAct::shown))
                : Stream.of(node);
    }

    private static boolean has(Node node, String... looks) {
        return Stream.of(looks).anyMatch(node.getStyleClass()::contains);
    }

    private static boolean mayPress(Node node) {
        return node instanceof ButtonBase button
                && !button.isDisabled()
                && button.getText() != null
                && NOT_PRESSED.stream().map(Messages::of).noneMatch(button.getText()::equals)
                && !button.getText().contains(":");
    }

    private static void press(Node node) {
        node.requestFocus();
        ((ButtonBase) node).fire();
    }

    private void type(Node node) {
        CodeEditor editor = (CodeEditor) node;
        editor.requestFocus();
        editor.moveTo(number % (editor.getLength() + 1));
        if (number % 4 == 0 && editor.getLength() > 0) {
            editor.deletePreviousChar();
        } else {
            editor.replaceSelection(TEXTS.get(number % TEXTS.size()));
        }
    }

    private void typeNumber(Node node) {
        TextField field = (TextField) node;
        field.requestFocus();
        if (field.isEditable()) {
            field.setText(NUMBERS.get(number % NUMBERS.size()));
        }
    }

    private void turn(Node node) {
        Slider slider = (Slider) node;
        slider.requestFocus();
        slider.setValue(
                slider.getMin() + (slider.getMax() - slider.getMin()) * (number % 21) / 20.0);
    }

    private void point(Node node) {
        node.requestFocus();
        double x = node.getLayoutBounds().getWidth() * (number % 10) / 10;
        double y = node.getLayoutBounds().getHeight() * (number / 10 % 10) / 10;
        for (var type :
                List.of(
                        MouseEvent.MOUSE_MOVED,
                        MouseEvent.MOUSE_PRESSED,
                        MouseEvent.MOUSE_DRAGGED,
                        MouseEvent.MOUSE_RELEASED)) {
            var at = node.localToScene(x, y);
            boolean down = type != MouseEvent.MOUSE_MOVED;
            Event.fireEvent(
                    node,
                    new MouseEvent(
                            type,
                            at.getX(),
                            at.getY(),
                            at.getX(),
                            at.getY(),
                            down ? MouseButton.PRIMARY : MouseButton.NONE,
                            1,
                            false,
                            false,
                            false,
                            false,
                            down,
                            false,
                            false,
                            true,
                            false,
                            true,
                            null));
            x += 20;
            y += 15;
        }
    }

    private void key(RobotWindow robot) {
        KeyCode code = KEYS.get(number % KEYS.size());
        boolean control = number / KEYS.size() % 4 == 1 && code != KeyCode.O;
        boolean alt = number / KEYS.size() % 4 == 2;
        for (var type : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
            Event.fireEvent(focus(robot), event(type, code, control, alt));
        }
    }

    private static Node focus(RobotWindow robot) {
        Node owner = robot.stage().getScene().getFocusOwner();
        return owner == null ? robot.stage().getScene().getRoot() : owner;
    }

    private static KeyEvent event(
            javafx.event.EventType<KeyEvent> type, KeyCode code, boolean control, boolean alt) {
        return new KeyEvent(type, "", "", code, false, control, alt, false);
    }
}
