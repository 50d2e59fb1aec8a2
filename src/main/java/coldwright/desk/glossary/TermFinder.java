package coldwright.desk.glossary;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;

/** Finds the first use of each term in the texts of a step or a page. */
public final class TermFinder {
    private final Glossary glossary = Glossary.ofThisProgram();
    private final Set<GlossaryTerm> seen = new HashSet<>();

    /**
     * A piece of a text.
     *
     * @param term the term that it is; empty for other text and for later uses
     */
    public record Piece(String text, Optional<GlossaryTerm> term) {}

    /** Splits a text into pieces, which together are the text. */
    public List<Piece> split(String text) {
        List<Piece> pieces = new ArrayList<>();
        Matcher found = glossary.matcher(text);
        int from = 0;
        while (!glossary.terms().isEmpty() && found.find()) {
            Optional<GlossaryTerm> term = glossary.term(found.group()).filter(seen::add);
            if (term.isPresent()) {
                addPlain(text.substring(from, found.start()), pieces);
                pieces.add(new Piece(found.group(), term));
                from = found.end();
            }
        }
        addPlain(text.substring(from), pieces);
        return pieces;
    }

    private static void addPlain(String text, List<Piece> pieces) {
        if (!text.isEmpty()) {
            pieces.add(new Piece(text, Optional.empty()));
        }
    }
}
