package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.text.TextFile;

import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntUnaryOperator;

/** Builds a lesson from its top-level blocks, in order. */
final class LessonBuilder {
    private static final String TITLE_EXAMPLE = "`# Sugar and ice`";

    /** A long lesson has twenty; every view keeps all of them. */
    private static final int MOST_STEPS = 500;

    private static final String STEP_EXAMPLE = "`## Why the tub is a brick`";

    private final String fileName;
    private final FaultList faults;
    private final BlockCloser.Closed source;
    private final Function<String, TextFile> files;
    private final ProseCleaner cleaner;
    private final List<LessonPart> opening = new ArrayList<>();
    private final List<LessonStep> steps = new ArrayList<>();
    private final List<KitItem> kit = new ArrayList<>();
    private final Map<String, Integer> lineByTitle = new LinkedHashMap<>();
    private final List<Node> prose = new ArrayList<>();
    private List<LessonPart> parts = opening;
    private String title = "";
    private LessonHeader header = LessonHeader.NONE;
    private boolean afterTitle;
    private String stepTitle = "";
    private int stepLine;
    private boolean anySnippet;

    /** Index in the step of its last own snippet, if that has no solution yet; else −1. */
    private int unsolved = -1;

    private boolean emptyTitle;
    private boolean tooLong;

    LessonBuilder(
            String fileName,
            FaultList faults,
            BlockCloser.Closed source,
            Function<String, TextFile> files) {
        this.fileName = fileName;
        this.faults = faults;
        this.source = source;
        this.files = files;
        this.cleaner = new ProseCleaner(faults, source::lineInFile);
    }

    /** A lesson without content, only with its faults. */
    Lesson unreadable() {
        return lesson("");
    }

    void add(Node block) {
        int line = ProseCleaner.lineOf(block, source::lineInFile);
        boolean directlyUnderTitle = afterTitle;
        afterTitle = false;
        if (block instanceof Heading heading && heading.getLevel() <= 2) {
            addHeading(heading, line);
        } else if (ProseCleaner.isComment(block)) {
            addComment((HtmlBlock) block, directlyUnderTitle);
        } else if (block instanceof FencedCodeBlock code) {
            addBlock(code, line);
        } else if (!(block instanceof LinkReferenceDefinition)) {
            addProse(block);
        }
    }

    /**
     * Maps lines of a block's content, which begins {@code below} lines below it, to lines in the
     * file.
     */
    private IntUnaryOperator linesFrom(Node block, int below) {
        int first = block.getSourceSpans().get(0).getLineIndex() + below;
        return index -> source.lineInFile(first + index);
    }

    private void addHeading(Heading heading, int line) {
        ProseCleaner own = new ProseCleaner(faults, source::lineInFile);
        own.clean(heading);
        for (VerifiedNumber verifiedNumber : own.takeVerifiedNumbers()) {
            faults.add(verifiedNumber.line(), text("heading.number", verifiedNumber.written()));
        }
        String words = ProseCleaner.wordsOf(heading).strip();
        if (heading.getLevel() == 1) {
            if (title.isEmpty() && !words.isEmpty() && stepLine == 0) {
                title = words;
                afterTitle = true;
            } else {
                emptyTitle |= words.isEmpty();
                faults.add(
                        line,
                        words.isEmpty()
                                ? text("title.empty", TITLE_EXAMPLE)
                                : text("title.second", words));
                prose.add(heading);
            }
            return;
        }
        endStep();
        if (words.isEmpty()) {
            faults.add(line, text("step.no-title", STEP_EXAMPLE));
        }
        Integer former = lineByTitle.putIfAbsent(words, line);
        if (former != null && !words.isEmpty()) {
            faults.add(line, text("step.same-title", former, words));
        }
        stepTitle = words;
        stepLine = line;
        parts = new ArrayList<>();
        unsolved = -1;
    }

    private void addComment(HtmlBlock comment, boolean directlyUnderTitle) {
        if (VerifiedNumberReader.isMeant(comment.getLiteral().strip())) {
            cleaner.clean(comment);
            return;
        }
        addKit(comment);
        boolean isHeader =
                stepLine == 0
                        && header.equals(LessonHeader.NONE)
                        && LessonHeader.isMeant(comment.getLiteral(), directlyUnderTitle);
        if (isHeader) {
            header = LessonHeader.read(comment.getLiteral(), linesFrom(comment, 0), faults);
            int line = ProseCleaner.lineOf(comment, source::lineInFile);
            opening.addAll(AskedFile.snippet(header.asks(), line, files, faults));
        }
    }

    private void addKit(HtmlBlock comment) {
        IntUnaryOperator within = linesFrom(comment, 0);
        String[] lines = comment.getLiteral().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.startsWith("kit:")) {
                faults.read(within.applyAsInt(i), () -> KitItem.read(line)).ifPresent(kit::add);
            }
        }
    }

    private void addBlock(FencedCodeBlock block, int line) {
        String info = block.getInfo();
        BlockKind word = faults.read(line, () -> BlockKind.named(info)).orElse(BlockKind.PLAIN);
        if (word == BlockKind.PLAIN) {
            addProse(block);
            return;
        }
        String text = block.getLiteral();
        IntUnaryOperator within = linesFrom(block, 1);
        endProse();
        if (stepLine == 0 && word != BlockKind.TEACHER) {
            faults.add(line, text("block.early", word.words(), STEP_EXAMPLE));
        }
        if (word == BlockKind.PREDICTION || word == BlockKind.QUESTION) {
            boolean runless = word == BlockKind.QUESTION;
            PredictionReader.read(text, within, faults, runless, this::belowSnippet)
                    .ifPresent(parts::add);
        } else if (word == BlockKind.TEACHER) {
            addTeacher(text, line, within);
        } else if (word == BlockKind.CHECK) {
            if (!anySnippet) {
                faults.add(line, text("check.early"));
            }
            parts.add(new LessonPart.Check(line, CheckReader.read(text, within, faults)));
        } else if (word == BlockKind.JAVA_SOLUTION) {
            addSolution(text, line);
        } else {
            addSnippet(text, line, within, word == BlockKind.JAVA_GIVEN);
        }
    }

    private void addSnippet(String text, int line, IntUnaryOperator within, boolean given) {
        String code = text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
        if (code.isBlank()) {
            faults.add(line, text("snippet.empty"));
            return;
        }
        Aside.read(code, within, faults);
        anySnippet = true;
        unsolved = given ? unsolved : parts.size();
        parts.add(new LessonPart.Snippet(line, code, given, DialReader.read(code, within, faults)));
    }

    private void addTeacher(String text, int line, IntUnaryOperator within) {
        ProseCleaner own = new ProseCleaner(faults, within);
        List<Node> notes = own.blocks(text);
        if (notes.isEmpty()) {
            faults.add(line, text("teacher.empty"));
            return;
        }
        parts.add(new LessonPart.Teacher(line, notes, belowSnippet(own.takeVerifiedNumbers())));
    }

    /** Verified numbers below a snippet; if there is no snippet, none, and a fault for each. */
    private List<VerifiedNumber> belowSnippet(List<VerifiedNumber> numbers) {
        if (anySnippet) {
            return numbers;
        }
        for (VerifiedNumber one : numbers) {
            faults.add(one.line(), text("number.early", one.written()));
        }
        return List.of();
    }

    /** A solution belongs to the last snippet above it in its step. */
    private void addSolution(String text, int line) {
        if (text.isBlank()) {
            faults.add(line, text("solution.empty"));
            return;
        }
        if (unsolved >= 0 && parts.get(unsolved) instanceof LessonPart.Snippet snippet) {
            parts.set(unsolved, snippet.solvedBy(text.stripTrailing()));
            unsolved = -1;
            return;
        }
        faults.add(line, text("solution.early"));
    }

    private void addProse(Node block) {
        boolean code = block instanceof FencedCodeBlock;
        if (!code) {
            cleaner.clean(block);
        }
        if (code || block.getParent() != null) {
            prose.add(block);
        }
    }

    private void endProse() {
        if (!prose.isEmpty()) {
            int line = ProseCleaner.lineOf(prose.get(0), source::lineInFile);
            parts.add(
                    new LessonPart.Prose(line, prose, belowSnippet(cleaner.takeVerifiedNumbers())));
            prose.clear();
        }
    }

    private void endStep() {
        endProse();
        reportPredictionsWithoutSnippet();
        if (stepLine > 0 && steps.size() < MOST_STEPS) {
            steps.add(new LessonStep(stepTitle, stepLine, parts));
        } else if (stepLine > 0 && !tooLong) {
            tooLong = true;
            faults.add(stepLine, text("steps.many", MOST_STEPS));
        }
    }

    private void reportPredictionsWithoutSnippet() {
        int lastRun =
                LessonPart.only(LessonPart.Snippet.class, parts).stream()
                        .filter(snippet -> !snippet.given())
                        .mapToInt(LessonPart::line)
                        .max()
                        .orElse(0);
        LessonPart.only(LessonPart.Prediction.class, parts).stream()
                .filter(prediction -> prediction.line() > lastRun)
                .forEach(prediction -> faults.add(prediction.line(), text("prediction.late")));
    }

    Lesson build(String text) {
        endStep();
        if (title.isEmpty() && !emptyTitle) {
            faults.add(1, text("no-title", TITLE_EXAMPLE));
        }
        if (steps.isEmpty()) {
            faults.add(1, text("no-step", STEP_EXAMPLE));
        }
        return lesson(text);
    }

    private Lesson lesson(String text) {
        Path last = Path.of(fileName).getFileName();
        String name = last == null ? fileName : last.toString();
        return new Lesson(
                fileName,
                title.isEmpty() ? name : title,
                header.track(),
                header.minutes(),
                header.needs(),
                header.asks(),
                opening,
                steps,
                kit,
                faults.inOrder(),
                text);
    }
}
