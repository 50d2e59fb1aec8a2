package coldwright.lesson;

import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * CommonMark that stands within a fenced block.
 *
 * @param nodes its blocks, in order
 * @param held the numbers in it that are held
 */
record Explained(List<Node> nodes, List<Held> held) {
    /**
     * Parses it and leaves what is shown.
     *
     * @param text the CommonMark
     * @param lineInFile gives the line in the file of a line of the text, from 0
     * @param faults takes what is wrong
     */
    static Explained of(String text, IntUnaryOperator lineInFile, FaultList faults) {
        Node document = LessonReader.parser().parse(text);
        ProseMender mender = new ProseMender(faults, lineInFile);
        List<Node> nodes = new ArrayList<>();
        Node next;
        for (Node block = document.getFirstChild(); block != null; block = next) {
            next = block.getNext();
            mender.mend(block);
            if (block.getParent() != null && !(block instanceof LinkReferenceDefinition)) {
                nodes.add(block);
            }
        }
        return new Explained(nodes, mender.takeHeld());
    }
}
