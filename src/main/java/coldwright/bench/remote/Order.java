package coldwright.bench.remote;

/** One thing for the bench's process to do. */
public sealed interface Order {
    /** Forget every class and variable of the snippets so far. */
    record Fresh() implements Order {}

    /**
     * Send what is printed and drawn from here to the end of the batch. Until then it is dropped.
     *
     * @param printedLimit most characters to send
     * @param figureLimit most figures to send
     */
    record Listen(int printedLimit, int figureLimit) implements Order {}

    /**
     * Make a class known.
     *
     * @param code the class
     */
    record Define(CompiledClass code) implements Order {}

    /**
     * Exchange the bodies of a class that is known, keeping its variables' values. The near side
     * does this itself through the debug interface; it never crosses the wire.
     *
     * @param code the class with its new bodies
     */
    record Redefine(CompiledClass code) implements Order {}

    /**
     * Run the statement compiled into a class.
     *
     * @param className its name
     * @param wantsValue whether the statement's value is to be sent back
     */
    record Invoke(String className, boolean wantsValue) implements Order {}

    /**
     * Set a variable instead of running its declaration.
     *
     * @param className the class that holds it
     * @param variable its name
     * @param value the number to set, within the variable's type
     */
    record Assign(String className, String variable, double value) implements Order {}
}
