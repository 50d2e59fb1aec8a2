package coldwright.lesson;

import org.commonmark.node.Node;

import java.util.List;

/** A part of a step. */
public sealed interface LessonPart {
    /** The line in the file where it begins, from 1; of a block, the line of its fence. */
    int line();

    /** Calls the visitor's method for this kind of part. */
    void accept(Visitor visitor);

    /** The parts of one kind, in order. */
    static <P extends LessonPart> List<P> only(Class<P> kind, List<LessonPart> parts) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /**
     * Handles every kind of part. Its methods have no default, so that a new kind compiles only
     * once every visitor handles it; an empty method means that a visitor ignores a kind.
     */
    interface Visitor {
        /** Text to read. */
        void prose(Prose prose);

        /** A note only for the teacher. */
        void teacher(Teacher note);

        /** Java to run. */
        void snippet(Snippet snippet);

        /** A question before a run. */
        void prediction(Prediction prediction);

        /** A question without a run. */
        void question(Question question);

        /** Checks on the snippets above. */
        void check(Check check);
    }

    /** Text to read: its parsed blocks, read-only, and the verified numbers in it. */
    record Prose(int line, List<Node> nodes, List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        public Prose {
            nodes = List.copyOf(nodes);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.prose(this);
        }
    }

    /** Notes only for the teacher, as {@link Prose}: misconceptions, timing, questions to ask. */
    record Teacher(int line, List<Node> nodes, List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        public Teacher {
            nodes = List.copyOf(nodes);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.teacher(this);
        }
    }

    /**
     * Java to run, from the line after its fence.
     *
     * @param given whether it runs automatically and is shown folded
     * @param dials its numbers with sliders
     * @param solution for an exercise, Java that solves it, which the author's checks run instead
     *     of the code; empty if the code itself must pass them
     */
    record Snippet(int line, String code, boolean given, List<Dial> dials, String solution)
            implements LessonPart {
        public Snippet {
            dials = List.copyOf(dials);
        }

        /** A snippet that isn't an exercise. */
        public Snippet(int line, String code, boolean given, List<Dial> dials) {
            this(line, code, given, dials, "");
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.snippet(this);
        }

        /** The same snippet with a solution. */
        Snippet solvedBy(String newSolution) {
            return new Snippet(line, code, given, dials, newSolution);
        }
    }

    /** A question with its right answer; what learners answer is kept, handed in and marked. */
    sealed interface Asked extends LessonPart {
        /** The question, one line. */
        String question();

        /** The right answer. */
        ExpectedAnswer answer();

        /** CommonMark blocks to show after the answer, or after the run; may be empty. */
        List<Node> explanation();
    }

    /** A question to answer before a run, after which the explanation's numbers are verified. */
    record Prediction(
            int line,
            String question,
            ExpectedAnswer answer,
            List<Node> explanation,
            List<VerifiedNumber> verifiedNumbers)
            implements Asked {
        public Prediction {
            explanation = List.copyOf(explanation);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.prediction(this);
        }
    }

    /** A question without a run: recall, or a part of a test; several choices may be right. */
    record Question(
            int line,
            String question,
            ExpectedAnswer.Several answer,
            List<Node> explanation,
            List<VerifiedNumber> verifiedNumbers)
            implements Asked {
        public Question {
            explanation = List.copyOf(explanation);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.question(this);
        }
    }

    /** Checks on the snippets above, one per line. */
    record Check(int line, List<CheckExpectation> expectations) implements LessonPart {
        public Check {
            expectations = List.copyOf(expectations);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.check(this);
        }
    }
}
