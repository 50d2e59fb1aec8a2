package coldwright.bench.remote;

import java.util.HashMap;
import java.util.Map;

/** The classes of the snippets since the last fresh start. */
final class SnippetLoader extends ClassLoader {
    private final Map<String, byte[]> waiting = new HashMap<>();

    SnippetLoader() {
        super("snippets", SnippetLoader.class.getClassLoader());
    }

    synchronized void add(ClassCode code) {
        waiting.put(code.name(), code.bytes());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes;
        synchronized (this) {
            bytes = waiting.remove(name);
        }
        if (bytes == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }
}
