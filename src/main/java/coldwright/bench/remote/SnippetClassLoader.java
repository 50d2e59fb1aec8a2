package coldwright.bench.remote;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Loads the classes of the snippets since the last fresh start. */
final class SnippetClassLoader extends ClassLoader {
    private final Map<String, byte[]> waiting = new HashMap<>();

    SnippetClassLoader() {
        super("snippets", SnippetClassLoader.class.getClassLoader());
    }

    synchronized void add(CompiledClass code) {
        waiting.put(code.name(), code.bytes());
    }

    /** The class of this name, if it has been used. */
    Optional<Class<?>> loaded(String name) {
        return Optional.ofNullable(findLoadedClass(name));
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
