package coldwright.batch;

import coldwright.science.plan.Finding;
import coldwright.science.standards.NameVerdict;
import coldwright.science.style.Style;
import coldwright.words.Phrase;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All results for a batch. Window, terminal, JSON and paper select from it, and the words of each
 * fact are in one place. Keys and order of the facts are those of {@code --json} ({@code
 * docs/batch-file.md}).
 *
 * @param facts values with their units, ranges and sources
 * @param findings expected problems and how to fix them
 * @param names names it may be sold under
 * @param declarations allergens and alcohol, in sentences
 * @param notes assumptions and limits of the models
 */
public record BatchReport(
        List<Fact> facts,
        List<Finding> findings,
        List<NameVerdict> names,
        List<Phrase> declarations,
        List<Phrase> notes) {
    /** Shown if there are no findings. */
    public static final Phrase NO_FINDINGS = Phrase.of("batch", "page.no-findings");

    /** Facts that are shown in other words than their own sentence. */
    public static final String PAC = "pac_g_of_sucrose_per_1000_g";

    public BatchReport {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
        names = List.copyOf(names);
        declarations = List.copyOf(declarations);
        notes = List.copyOf(notes);
    }

    BatchReport(List<Fact> facts) {
        this(facts, List.of(), List.of(), List.of(), List.of());
    }

    /**
     * The facts of one group, in order.
     *
     * @param group such as {@code crystals}
     */
    public List<Fact> facts(String group) {
        return facts.stream().filter(fact -> fact.group().equals(group)).toList();
    }

    /** The fact with this key; empty if the batch has none. */
    public Optional<Fact> find(String key) {
        return facts.stream().filter(fact -> fact.key().equals(key)).findFirst();
    }

    /**
     * The fact with this key.
     *
     * @throws IllegalArgumentException if the batch has no such fact
     */
    public Fact fact(String key) {
        return find(key)
                .orElseThrow(
                        () -> new IllegalArgumentException("the report has no \"" + key + "\""));
    }

    /** The sentences of these facts in the language shown, without those that the batch lacks. */
    public List<String> sentences(String... keys) {
        return Arrays.stream(keys).flatMap(key -> find(key).stream()).map(Fact::sentence).toList();
    }

    /** The names that its style claims, whether it may bear them or not. */
    List<NameVerdict> names(Style style) {
        return names.stream().filter(one -> style.claims().contains(one.name())).toList();
    }

    /** The names that its style claims: those it may bear, or all of them if it may bear none. */
    public List<NameVerdict> claimed(Style style) {
        List<NameVerdict> claimed = names(style);
        List<NameVerdict> allowed = claimed.stream().filter(NameVerdict::allowed).toList();
        return allowed.isEmpty() ? claimed : allowed;
    }

    /**
     * A line for each source that its facts rest on, then one for each kind of rule of thumb in its
     * findings.
     */
    public List<Phrase> sources() {
        return Stream.concat(
                        facts.stream().map(fact -> fact.basis().line()),
                        findings.stream().flatMap(one -> Basis.linesOf(one.reason()).stream()))
                .distinct()
                .toList();
    }

    /**
     * A duration in words.
     *
     * @param minutes the duration; infinite for never
     */
    public static Phrase time(double minutes) {
        return ReportFacts.time(minutes);
    }
}
