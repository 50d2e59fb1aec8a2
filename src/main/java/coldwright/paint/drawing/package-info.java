/** The parts of a drawing to scale: its layout, pieces, colours and legend. */
package coldwright.paint.drawing;
