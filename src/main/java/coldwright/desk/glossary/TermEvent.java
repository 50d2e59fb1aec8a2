package coldwright.desk.glossary;

import javafx.event.Event;
import javafx.event.EventType;

/** The learner asks for a term's meaning; the window shows it beside the target. */
public final class TermEvent extends Event {
    private static final long serialVersionUID = 1;

    public static final EventType<TermEvent> ASKED = new EventType<>(Event.ANY, "TERM_ASKED");

    private final transient GlossaryTerm term;

    public TermEvent(GlossaryTerm term) {
        super(ASKED);
        this.term = term;
    }

    public GlossaryTerm term() {
        return term;
    }
}
