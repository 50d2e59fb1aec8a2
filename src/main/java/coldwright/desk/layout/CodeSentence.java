package coldwright.desk.layout;

import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;

import javafx.scene.AccessibleRole;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence with Java between backticks. */
public final class CodeSentence extends TextFlow {
    private static final Pattern JAVA = Pattern.compile("(?<!`)`([^`]+)`(?!`)");

    /** Shows a sentence in a style class. */
    public CodeSentence(String words, String look) {
        getStyleClass().addAll("sentence", look);
        Matcher java = JAVA.matcher(words);
        int at = 0;
        while (java.find()) {
            put(Typography.of(words.substring(at, java.start())), false);
            put(java.group(1), true);
            at = java.end();
        }
        put(Typography.of(words.substring(at)), false);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(words);
    }

    private void put(String words, boolean java) {
        Text text = TextControls.styled(new Text(words), "ink");
        if (java) {
            text.getStyleClass().add("code");
        }
        getChildren().add(text);
    }
}
