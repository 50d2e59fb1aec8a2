package coldwright.desk;

import coldwright.workbook.LoadedWork;
import coldwright.workbook.Saved;
import coldwright.workbook.Workbook;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.work.ContentHash;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Saves settings and agreements, and merges them with those of another window. Used on the window's
 * thread; writing happens on another.
 */
final class SettingsKeeper {
    private final Workbook workbook;
    private final Executor background;
    private final Executor window;
    private final Consumer<String> say;
    private Consumer<Preferences> settled = preferences -> {};
    private Optional<Preferences> chosen = Optional.empty();
    private Agreements agreements;

    SettingsKeeper(Workbook workbook, Executor background, Executor window, Consumer<String> say) {
        this.workbook = workbook;
        this.background = background;
        this.window = window;
        this.say = say;
        LoadedWork<Agreements> loaded = workbook.agreements();
        agreements = loaded.value();
        loaded.messages().forEach(words -> window.execute(() -> say.accept(words)));
    }

    /**
     * Merges these settings with those of another window from now on; {@code whenSettled} receives
     * the result on the window's thread.
     */
    void follow(Preferences now, Consumer<Preferences> whenSettled) {
        chosen = Optional.of(now);
        settled = whenSettled;
    }

    /** Saves the preferences. */
    void keep(Preferences preferences) {
        chosen = Optional.of(preferences);
        keepPreferences();
    }

    /** The window is closing: saves the preferences and waits for it. */
    void close() {
        chosen.ifPresent(workbook::keep);
    }

    /** Saves everything again, changed or not. */
    void keepAll() {
        keepPreferences();
        keepAgreements();
    }

    private void keepPreferences() {
        chosen.ifPresent(
                given ->
                        CompletableFuture.supplyAsync(() -> workbook.keep(given), background)
                                .thenAcceptAsync(saved -> settle(given, saved), window));
    }

    private void settle(Preferences given, Saved<Preferences> saved) {
        saved.failure().ifPresent(say);
        Preferences now = chosen.orElse(given);
        Preferences both = Preferences.merge(given, now, saved.value()).value();
        if (!both.equals(now)) {
            settled.accept(both);
        }
    }

    /** Whether the learner agreed earlier to run a lesson's snippets. */
    boolean agreed(ContentHash hash) {
        return agreements.agreed(hash);
    }

    /** Records that the learner agrees to run a lesson's snippets. */
    void agree(ContentHash hash, String name) {
        agreements = agreements.agree(hash, name);
        keepAgreements();
    }

    private void keepAgreements() {
        Agreements given = agreements;
        CompletableFuture.supplyAsync(() -> workbook.keep(given), background)
                .thenAcceptAsync(
                        saved -> {
                            saved.failure().ifPresent(say);
                            agreements = agreements.mergedWith(given, saved.value());
                        },
                        window);
    }
}
