package coldwright.desk.lesson.model;

import org.commonmark.node.Node;

import java.util.List;

/** The model of one part of a step. */
public sealed interface PartModel
        permits PartModel.Prose, SnippetModel, PredictionModel, CheckModel {
    /** Text to read, as parsed. */
    record Prose(List<Node> nodes) implements PartModel {
        @Override
        public void accept(Visitor visitor) {
            visitor.prose(this);
        }
    }

    /** Calls the visitor's method for this kind of part. */
    void accept(Visitor visitor);

    /**
     * Visits every kind of part; a new kind compiles only once each visitor has a method for it.
     */
    interface Visitor {
        void prose(Prose prose);

        void snippet(SnippetModel snippet);

        void prediction(PredictionModel prediction);

        void check(CheckModel check);
    }
}
