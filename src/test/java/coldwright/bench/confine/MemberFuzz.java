package coldwright.bench.confine;

import org.objectweb.asm.Type;

import java.io.File;
import java.io.PrintStream;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Proxy;
import java.security.Permission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Calls each member of Java that the list allows with odd arguments, under a security manager that
 * notes and refuses what is asked for. A program of its own, because only Java 17 still has such a
 * manager.
 */
@SuppressWarnings("removal")
final class MemberFuzz {
    private static final int MOST_OF_A_TYPE = 12;
    private static final long MOST_MS = 300;

    /** These wait for input or never end with some arguments, which costs time and nothing else. */
    private static final Set<String> ENDLESS =
            Set.of("iterate", "generate", "ints", "longs", "doubles", "nCopies", "repeat", "pow");

    private final Map<Class<?>, List<Object>> pool = new HashMap<>();
    private final Set<String> asked = new TreeSet<>();
    private final Random random;
    private volatile Thread calling;
    private String member = "";
    private int calls;

    private MemberFuzz(long seed) {
        random = new Random(seed);
        for (Object value :
                new Object[] {
                    0,
                    1,
                    -1,
                    Integer.MAX_VALUE,
                    7L,
                    -3L,
                    0.5,
                    Double.NaN,
                    2f,
                    'x',
                    true,
                    false,
                    (short) 3,
                    (byte) -1,
                    "",
                    "/etc/passwd",
                    "user.home",
                    "UTF-8",
                    "%s %d",
                    "12",
                    "2026-01-01",
                    "[a-z]+",
                    Locale.ROOT,
                    new int[] {3, 1},
                    new double[] {2.5},
                    new Object[] {"a", 1},
                    new String[] {"b", "a"},
                    new char[] {'c'},
                    new byte[] {65},
                    new long[] {4},
                    List.of(1, 2),
                    new ArrayList<>(List.of("a")),
                    Map.of("k", 1),
                    Set.of(3),
                    String.class,
                    Comparator.naturalOrder()
                }) {
            add(value);
        }
    }

    private void add(Object value) {
        for (Class<?> type = value.getClass(); type != null; type = type.getSuperclass()) {
            addAs(type, value);
            for (Class<?> one : type.getInterfaces()) {
                addAs(one, value);
            }
        }
    }

    private void addAs(Class<?> type, Object value) {
        List<Object> values = pool.computeIfAbsent(type, key -> new ArrayList<>());
        if (values.size() < MOST_OF_A_TYPE) {
            values.add(value);
        } else if (type != Object.class) {
            values.set(random.nextInt(MOST_OF_A_TYPE), value);
        }
    }

    private Object value(Class<?> type) {
        Class<?> boxed =
                type.isPrimitive() ? Array.get(Array.newInstance(type, 1), 0).getClass() : type;
        List<Object> known = pool.get(boxed);
        if (known != null && (type.isPrimitive() || random.nextInt(12) > 0)) {
            return known.get(random.nextInt(known.size()));
        }
        if (type.isInterface() && type.getName().startsWith("java.util.function")) {
            return Proxy.newProxyInstance(
                    getClass().getClassLoader(),
                    new Class<?>[] {type},
                    (proxy, method, arguments) ->
                            method.getReturnType() == void.class
                                    ? null
                                    : value(method.getReturnType()));
        }
        return type.isPrimitive() ? Array.get(Array.newInstance(type, 1), 0) : null;
    }

    private List<Executable> members() {
        List<Executable> all = new ArrayList<>();
        AllowedNames list = AllowedNames.USUAL;
        for (String internal : new TreeSet<>(list.entries().keySet())) {
            if (internal.startsWith("java/") && !internal.equals("java/io/PrintStream")) {
                try {
                    Class<?> type = Class.forName(internal.replace('/', '.'));
                    List<Executable> own = new ArrayList<>(List.of(type.getConstructors()));
                    own.addAll(List.of(type.getMethods()));
                    for (Executable one : own) {
                        String name = one instanceof Method ? one.getName() : "<init>";
                        String descriptor =
                                one instanceof Method method
                                        ? Type.getMethodDescriptor(method)
                                        : Type.getConstructorDescriptor((Constructor<?>) one);
                        if (list.member(internal, name, descriptor)
                                && AllowedNamesTest.allListed(descriptor)
                                && !ENDLESS.contains(name)) {
                            all.add(one);
                        }
                    }
                } catch (ClassNotFoundException e) {
                    // of a newer Java
                }
            }
        }
        return all;
    }

    private void call(Executable one) {
        Object[] arguments = new Object[one.getParameterCount()];
        for (int i = 0; i < arguments.length; i++) {
            arguments[i] = value(one.getParameterTypes()[i]);
        }
        boolean fixed = one instanceof Constructor || Modifier.isStatic(one.getModifiers());
        Object receiver = fixed ? null : value(one.getDeclaringClass());
        if (!fixed && receiver == null) {
            return;
        }
        member = one.toString();
        calls++;
        Thread thread =
                new Thread(
                        () -> {
                            try {
                                Object given =
                                        one instanceof Method method
                                                ? method.invoke(receiver, arguments)
                                                : ((Constructor<?>) one).newInstance(arguments);
                                if (given != null) {
                                    add(given);
                                }
                            } catch (ReflectiveOperationException | RuntimeException | Error e) {
                                // odd arguments are refused in many ways
                            }
                        });
        thread.setDaemon(true);
        calling = thread;
        thread.start();
        try {
            thread.join(MOST_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        calling = null;
    }

    private final class Notes extends SecurityManager {
        @Override
        public void checkPermission(Permission permission) {
            String kind = permission.getClass().getSimpleName();
            boolean matters =
                    kind.equals("FilePermission") && !isOfJava(permission.getName())
                            || kind.equals("SocketPermission")
                            || kind.equals("PropertyPermission")
                                    && permission.getActions().contains("write")
                            || permission
                                    .getName()
                                    .matches(
                                            "exitVM.*|setIO|createClassLoader|setDefault.*|loadLibrary.*");
            if (matters && Thread.currentThread() == calling) {
                asked.add(member + " asks for " + permission);
                throw new SecurityException();
            }
        }

        @Override
        public void checkAccess(ThreadGroup group) {
            if (Thread.currentThread() == calling) {
                asked.add(member + " starts a thread");
                throw new SecurityException();
            }
        }

        private boolean isOfJava(String file) {
            return file.startsWith(System.getProperty("java.home") + File.separator);
        }
    }

    /**
     * Prints what was asked for, and how many calls were made.
     *
     * @param args seed, rounds
     */
    public static void main(String[] args) {
        MemberFuzz fuzz = new MemberFuzz(Long.parseLong(args[0]));
        PrintStream out = System.out;
        List<Executable> members = fuzz.members();
        members.forEach(fuzz::call); // loads what Java loads once
        fuzz.asked.clear();
        System.setSecurityManager(fuzz.new Notes());
        for (int i = 0; i < Integer.parseInt(args[1]); i++) {
            members.forEach(fuzz::call);
        }
        fuzz.asked.forEach(out::println);
        out.println(members.size() + " members, " + fuzz.calls + " calls");
        out.flush();
        Runtime.getRuntime().halt(0);
    }
}
