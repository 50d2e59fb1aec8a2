package coldwright.bench.compile;

import java.io.DataInputStream;
import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The constant pool of a class file (Java Virtual Machine Specification, section 4.4). */
final class ConstantPool {
    private static final int UTF8 = 1;
    private static final int CLASS = 7;
    private static final int FIELD = 9;
    private static final int METHOD = 10;
    private static final int INTERFACE_METHOD = 11;
    private static final int NAME_AND_TYPE = 12;

    private static final String SNIPPETS = "REPL/";
    private static final Pattern SNIPPET_CLASS =
            Pattern.compile("REPL/[\\p{L}\\p{N}_$]+", Pattern.UNICODE_CHARACTER_CLASS);

    private final int[] tags;
    private final int[] first;
    private final int[] second;
    private final String[] texts;

    private ConstantPool(int size) {
        tags = new int[size];
        first = new int[size];
        second = new int[size];
        texts = new String[size];
    }

    static ConstantPool read(DataInputStream in) throws IOException {
        int size = in.readUnsignedShort();
        ConstantPool pool = new ConstantPool(size);
        for (int i = 1; i < size; i++) {
            i += pool.readOne(i, in);
        }
        return pool;
    }

    /** Reads an entry; returns how many further places it takes. */
    private int readOne(int at, DataInputStream in) throws IOException {
        tags[at] = in.readUnsignedByte();
        switch (tags[at]) {
            case UTF8:
                texts[at] = in.readUTF();
                return 0;
            case 5: // long
            case 6: // double
                in.skipNBytes(8);
                return 1;
            case 15: // method handle
                in.skipNBytes(3);
                return 0;
            case CLASS:
            case 8: // string
            case 16: // method type
            case 19: // module
            case 20: // package
                first[at] = in.readUnsignedShort();
                return 0;
            case 3: // int
            case 4: // float
            case FIELD:
            case METHOD:
            case INTERFACE_METHOD:
            case NAME_AND_TYPE:
            case 17: // dynamic
            case 18: // invokedynamic
                first[at] = in.readUnsignedShort();
                second[at] = in.readUnsignedShort();
                return 0;
            default:
                throw new IOException("constant of unknown kind " + tags[at]);
        }
    }

    String text(int at) {
        return texts[at];
    }

    String className(int at) {
        return texts[first[at]];
    }

    /** Names of snippets' classes in whatever text: class names, descriptors, signatures. */
    Set<String> snippetClasses() {
        Set<String> names = new TreeSet<>();
        for (String text : texts) {
            if (text != null && text.contains(SNIPPETS)) {
                Matcher matcher = SNIPPET_CLASS.matcher(text);
                while (matcher.find()) {
                    names.add(matcher.group().replace('/', '.'));
                }
            }
        }
        return names;
    }

    Set<String> methods() {
        Set<String> methods = members(METHOD);
        methods.addAll(members(INTERFACE_METHOD));
        return methods;
    }

    Set<String> fields() {
        return members(FIELD);
    }

    private Set<String> members(int tag) {
        Set<String> members = new TreeSet<>();
        for (int i = 1; i < tags.length; i++) {
            if (tags[i] == tag) {
                members.add(className(first[i]) + "." + texts[first[second[i]]]);
            }
        }
        return members;
    }
}
