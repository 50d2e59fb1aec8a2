package coldwright.desk.run;

import java.util.concurrent.Executor;

/**
 * Queue, thread and gate of a lesson's runs.
 *
 * @param queue runs snippets
 * @param window the window's thread
 * @param gate blocks or allows runs
 */
public record RunContext(RunQueue queue, Executor window, RunGate gate) {}
