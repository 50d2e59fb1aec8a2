package coldwright.desk.page;

import javafx.scene.AccessibleRole;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** A sentence in which what stands between backticks is Java. */
final class Sentence extends TextFlow {
    /**
     * Sets it.
     *
     * @param words the sentence
     * @param look its look
     */
    Sentence(String words, String look) {
        getStyleClass().addAll("sentence", look);
        String[] pieces = words.split("`", -1);
        for (int i = 0; i < pieces.length; i++) {
            boolean closed = i < pieces.length - 1;
            boolean java = i % 2 == 1 && closed;
            String lone = i % 2 == 1 && !closed ? "`" : "";
            Text text = new Text(java ? pieces[i] : lone + curled(pieces[i]));
            text.getStyleClass().add("ink");
            if (java) {
                text.getStyleClass().add("code");
            }
            getChildren().add(text);
        }
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(words);
    }

    private static String curled(String words) {
        return words.replaceAll("(?<=\\p{L})'(?=\\p{L})", "’");
    }
}
