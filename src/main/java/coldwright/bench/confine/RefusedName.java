package coldwright.bench.confine;

import coldwright.words.Words;

import java.util.List;
import java.util.Map;

/**
 * A name that a confined snippet may not use.
 *
 * @param owner the class, binary name
 * @param member its member; empty if the class itself isn't allowed
 */
public record RefusedName(String owner, String member) {
    private static final Words TEXTS = Words.of("bench.confine");

    /** What the beginning of a name shows that the snippet wants; the first that fits counts. */
    private static final List<Map.Entry<String, String>> WANTED =
            List.of(
                    Map.entry("java.lang.System.exit", "exit"),
                    Map.entry("java.lang.System.in", "keyboard"),
                    Map.entry("java.lang.System.", "settings"),
                    Map.entry("java.util.Locale.setDefault", "settings"),
                    Map.entry("java.util.TimeZone", "settings"),
                    Map.entry("java.util.prefs.", "settings"),
                    Map.entry("java.util.Properties", "settings"),
                    Map.entry("java.lang.Runtime", "programs"),
                    Map.entry("java.lang.Process", "programs"),
                    Map.entry("java.lang.Thread", "threads"),
                    Map.entry("java.lang.Object.", "threads"),
                    Map.entry("java.util.concurrent.", "threads"),
                    Map.entry("java.util.Timer", "threads"),
                    Map.entry("java.lang.Class", "reflection"),
                    Map.entry("java.lang.Module", "reflection"),
                    Map.entry("java.lang.reflect.", "reflection"),
                    Map.entry("java.lang.invoke.", "reflection"),
                    Map.entry("java.util.ServiceLoader", "reflection"),
                    Map.entry("jdk.", "reflection"),
                    Map.entry("sun.", "reflection"),
                    Map.entry("java.net.", "network"),
                    Map.entry("javax.net.", "network"),
                    Map.entry("java.nio.channels.Socket", "network"),
                    Map.entry("java.io.", "files"),
                    Map.entry("java.nio.", "files"),
                    Map.entry("java.util.zip.", "files"),
                    Map.entry("java.util.jar.", "files"),
                    Map.entry("java.awt.", "windows"),
                    Map.entry("javax.swing.", "windows"),
                    Map.entry("javafx.", "windows"));

    /** The name as a reader of the snippet would write it. */
    public String written() {
        String type = owner.replace('$', '.');
        if (member.isEmpty()) {
            return type;
        }
        return member.equals("<init>") ? "new " + type : type + "." + member;
    }

    /** The word in the snippet that it is likely to stand for. */
    public String word() {
        String type = owner.substring(Math.max(owner.lastIndexOf('.'), owner.lastIndexOf('$')) + 1);
        return member.isEmpty() || member.equals("<init>") ? type : member;
    }

    /** What the snippet can't do, and what to use instead. */
    public String words() {
        String name = owner + "." + member;
        String wanted =
                member.startsWith("parallel")
                        ? "threads"
                        : WANTED.stream()
                                .filter(one -> name.startsWith(one.getKey()))
                                .map(Map.Entry::getValue)
                                .findFirst()
                                .orElse("other");
        return TEXTS.shown(wanted, written());
    }
}
