package coldwright.lesson;

import org.commonmark.node.Node;

import java.util.List;

/** What a step is made of. */
public sealed interface LessonPart {
    /** The line in the file where it begins, from 1. */
    int line();

    /**
     * Has this part treated as the kind that it is.
     *
     * @param visitor treats it
     */
    void accept(Visitor visitor);

    /**
     * Treats every kind of part. Its methods have no default, so that a new kind of part compiles
     * only once each visitor treats it; an empty method says that a visitor ignores a kind.
     */
    interface Visitor {
        /** Text to read. */
        void prose(Prose prose);

        /** A note for the teacher alone. */
        void teacher(Teacher note);

        /** Java to run. */
        void snippet(Snippet snippet);

        /** A question before a run. */
        void prediction(Prediction prediction);

        /** What the snippets above must give. */
        void check(Check check);
    }

    /**
     * Text to read.
     *
     * @param line where it begins
     * @param nodes the parsed blocks, in order; read them, never change them
     * @param verifiedNumbers the numbers in it that the calculator must bear out
     */
    record Prose(int line, List<Node> nodes, List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        /** Copies what is given. */
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
     * What the teacher alone should know: misconceptions, timing, questions to ask. No page of the
     * learner's shows it.
     *
     * @param line where its fence stands
     * @param nodes the parsed blocks, in order; read them, never change them
     * @param verifiedNumbers the numbers in it that the calculator must bear out
     */
    record Teacher(int line, List<Node> nodes, List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        /** Copies what is given. */
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
     * @param line where its fence stands; its code begins on the next line
     * @param code the Java text
     * @param given whether it runs by itself and is shown folded
     * @param dials the numbers in it that are offered as sliders
     * @param solution for an exercise, Java that solves it: what the author's checks run in place
     *     of the code; empty if the code itself must pass them
     */
    record Snippet(int line, String code, boolean given, List<Dial> dials, String solution)
            implements LessonPart {
        /** Copies what is given. */
        public Snippet {
            dials = List.copyOf(dials);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.snippet(this);
        }

        /**
         * A snippet that is no exercise.
         *
         * @param line where its fence stands; its code begins on the next line
         * @param code the Java text
         * @param given whether it runs by itself and is shown folded
         * @param dials the numbers in it that are offered as sliders
         */
        public Snippet(int line, String code, boolean given, List<Dial> dials) {
            this(line, code, given, dials, "");
        }

        /**
         * The same snippet with a solution.
         *
         * @param newSolution Java that solves it
         * @return a new snippet
         */
        Snippet solvedBy(String newSolution) {
            return new Snippet(line, code, given, dials, newSolution);
        }
    }

    /**
     * A question to answer before the run.
     *
     * @param line where its fence stands
     * @param question the question, one line
     * @param answer what is right
     * @param explanation CommonMark blocks to show after the run; may be empty
     * @param verifiedNumbers the numbers of the explanation that the calculator must bear out after
     *     that run
     */
    record Prediction(
            int line,
            String question,
            ExpectedAnswer answer,
            List<Node> explanation,
            List<VerifiedNumber> verifiedNumbers)
            implements LessonPart {
        /** Copies what is given. */
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
     * What the snippets above must give.
     *
     * @param line where its fence stands
     * @param expectations one for each line of it
     */
    record Check(int line, List<CheckExpectation> expectations) implements LessonPart {
        /** Checks and copies what is given. */
        public Check {
            expectations = List.copyOf(expectations);
        }

        @Override
        public void accept(Visitor visitor) {
            visitor.check(this);
        }
    }
}
