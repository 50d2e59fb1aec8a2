package coldwright.bench.remote;

import java.util.Optional;

/** An instruction to the bench's process. */
public sealed interface Order {
    /** The class that it defines or replaces, if it does. */
    default Optional<CompiledClass> definition() {
        if (this instanceof Define define) {
            return Optional.of(define.code());
        }
        return this instanceof Redefine redefine ? Optional.of(redefine.code()) : Optional.empty();
    }

    /** Discard every class and variable of the snippets so far. */
    record Fresh() implements Order {}

    /**
     * Send printed text and figures from here to the end of the batch. Before that they are
     * dropped.
     *
     * @param printedLimit maximum characters to send
     * @param figureLimit maximum figures to send
     */
    record Listen(int printedLimit, int figureLimit) implements Order {}

    /** Define a class. */
    record Define(CompiledClass code) implements Order {}

    /** Replace the bodies of a class and keep its variables' values. */
    record Redefine(CompiledClass code) implements Order {}

    /**
     * Run the statement compiled into a class.
     *
     * @param wantsValue whether to return the statement's value
     */
    record Invoke(String className, boolean wantsValue) implements Order {}

    /**
     * Set a variable instead of running its declaration.
     *
     * @param className the class that contains it
     * @param variable its name
     * @param value the number, within the variable's type
     */
    record Assign(String className, String variable, double value) implements Order {}
}
