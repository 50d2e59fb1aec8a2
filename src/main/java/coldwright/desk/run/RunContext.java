package coldwright.desk.run;

import java.util.concurrent.Executor;

/** The queue of a lesson's runs, the window's thread, and what the runs may do. */
public record RunContext(RunQueue queue, Executor window, RunGate gate) {}
