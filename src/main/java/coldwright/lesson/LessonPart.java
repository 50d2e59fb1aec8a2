package coldwright.lesson;

import org.commonmark.node.Node;

import java.util.List;

/** A part of a step. */
public sealed interface LessonPart {
    /** The line in the file where it begins, from 1. */
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

    /**
     * Text to read.
     *
     * @param line where it begins
     * @param nodes the parsed blocks, in order; read-only
     * @param verifiedNumbers the verified numbers in it
     */
    record Prose(int line, List<Node> nodes, List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        /** Makes defensive copies. */
        public Prose {
            nodes = List.copyOf(nodes);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.prose(this);
        }
    }

    /**
     * Notes only for the teacher: misconceptions, timing, questions to ask. Learners don't see
     * them.
     *
     * @param line line of its fence
     * @param nodes the parsed blocks, in order; read-only
     * @param verifiedNumbers the verified numbers in it
     */
    record Teacher(int line, List<Node> nodes, List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        /** Makes defensive copies. */
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
     * Java to run.
     *
     * @param line line of its fence; its code begins on the next line
     * @param given whether it runs automatically and is shown folded
     * @param dials its numbers with sliders
     * @param solution for an exercise, Java that solves it, which the author's checks run instead
     *     of the code; empty if the code itself must pass them
     */
    record Snippet(int line, String code, boolean given, List<Dial> dials, String solution)
            implements LessonPart {
        /** Makes defensive copies. */
        public Snippet {
            dials = List.copyOf(dials);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.snippet(this);
        }

        /**
         * A snippet that isn't an exercise.
         *
         * @param line line of its fence; its code begins on the next line
         * @param given whether it runs automatically and is shown folded
         * @param dials its numbers with sliders
         */
        public Snippet(int line, String code, boolean given, List<Dial> dials) {
            this(line, code, given, dials, "");
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

        /** CommonMark blocks to show after the answer; may be empty. */
        List<Node> explanation();
    }

    /**
     * A question to answer before the run.
     *
     * @param line line of its fence
     * @param question the question, one line
     * @param answer the right answer
     * @param explanation CommonMark blocks to show after the run; may be empty
     * @param verifiedNumbers the verified numbers of the explanation, checked after that run
     */
    record Prediction(
            int line,
            String question,
            ExpectedAnswer answer,
            List<Node> explanation,
            List<VerifiedNumber> verifiedNumbers)
            implements Asked {
        /** Makes defensive copies. */
        public Prediction {
            explanation = List.copyOf(explanation);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.prediction(this);
        }
    }

    /**
     * A question without a run: recall, or a part of a test.
     *
     * @param line line of its fence
     * @param question the question, one line
     * @param answer its choices, of which several may be right
     * @param explanation CommonMark blocks to show after the answer; may be empty
     * @param verifiedNumbers the verified numbers of the explanation, checked where it is
     */
    record Question(
            int line,
            String question,
            ExpectedAnswer.Several answer,
            List<Node> explanation,
            List<VerifiedNumber> verifiedNumbers)
            implements Asked {
        /** Makes defensive copies. */
        public Question {
            explanation = List.copyOf(explanation);
            verifiedNumbers = List.copyOf(verifiedNumbers);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.question(this);
        }
    }

    /**
     * Checks on the snippets above.
     *
     * @param line line of its fence
     * @param expectations one per line
     */
    record Check(int line, List<CheckExpectation> expectations) implements LessonPart {
        /** Validates and copies the components. */
        public Check {
            expectations = List.copyOf(expectations);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.check(this);
        }
    }
}
