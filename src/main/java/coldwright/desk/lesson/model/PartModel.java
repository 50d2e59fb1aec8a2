package coldwright.desk.lesson.model;

/** One part of a step as the desk holds it. */
public sealed interface PartModel permits ProseModel, SnippetModel, PredictionModel, CheckModel {
    /** Has this part treated as the kind that it is. */
    void accept(Visitor visitor);

    /** Treats every kind of part; a new kind compiles only once each visitor treats it. */
    interface Visitor {
        void prose(ProseModel prose);

        void snippet(SnippetModel snippet);

        void prediction(PredictionModel prediction);

        void check(CheckModel check);
    }
}
