package coldwright.desk.lesson.model;

/** One part of a step as the desk holds it. */
public sealed interface PartModel permits ProseModel, SnippetModel, PredictionModel, CheckModel {}
