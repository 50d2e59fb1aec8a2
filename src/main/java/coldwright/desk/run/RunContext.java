package coldwright.desk.run;

import java.util.concurrent.Executor;

/**
 * What a lesson's snippets run with.
 *
 * @param queue what runs them
 * @param window the window's thread
 * @param gate what their runs pass through
 */
public record RunContext(RunQueue queue, Executor window, RunGate gate) {}
