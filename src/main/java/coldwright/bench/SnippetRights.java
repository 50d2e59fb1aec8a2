package coldwright.bench;

/** What a snippet may do. */
public enum SnippetRights {
    /** It may name what the list of package {@code confine} has: no files, network or threads. */
    CONFINED,
    /** It may do all that the user may do. */
    EVERYTHING
}
