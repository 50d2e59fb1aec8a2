package coldwright.lesson;

import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * CommonMark within a fenced block.
 *
 * @param nodes its blocks, in order
 * @param verifiedNumbers the verified numbers in it
 */
record ExplainedBlock(List<Node> nodes, List<VerifiedNumber> verifiedNumbers) {
    /**
     * Parses the CommonMark and removes everything that isn't shown.
     *
     * @param text the CommonMark
     * @param lineInFile maps a line of the text, from 0, to its line in the file
     * @param faults collects the faults
     */
    static ExplainedBlock of(String text, IntUnaryOperator lineInFile, FaultList faults) {
        Node document = LessonReader.parser().parse(text);
        ProseCleaner mender = new ProseCleaner(faults, lineInFile);
        List<Node> nodes = new ArrayList<>();
        Node next;
        for (Node block = document.getFirstChild(); block != null; block = next) {
            next = block.getNext();
            mender.clean(block);
            if (block.getParent() != null && !(block instanceof LinkReferenceDefinition)) {
                nodes.add(block);
            }
        }
        return new ExplainedBlock(nodes, mender.takeVerifiedNumbers());
    }
}
