package coldwright.desk.lesson.model;

/** The model of one part of a step. */
public sealed interface PartModel permits ProseModel, SnippetModel, PredictionModel, CheckModel {
    /** Calls the visitor's method for this kind of part. */
    void accept(Visitor visitor);

    /**
     * Visits every kind of part; a new kind compiles only once each visitor has a method for it.
     */
    interface Visitor {
        void prose(ProseModel prose);

        void snippet(SnippetModel snippet);

        void prediction(PredictionModel prediction);

        void check(CheckModel check);
    }
}
