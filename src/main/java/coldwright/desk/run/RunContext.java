package coldwright.desk.run;

import java.util.concurrent.Executor;

/**
 * Queue, thread and gate of a lesson's runs.
 *
 * @param queue runs snippets
 * @param window the window's thread
 * @param gate what they may do
 */
public record RunContext(RunQueue queue, Executor window, RunGate gate) {}
