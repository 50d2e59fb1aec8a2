import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;

import javax.imageio.ImageIO;

/**
 * Draws the icon, a lantern whose light is a scoop that freezes from the rim. Argument: the PNG to
 * write.
 */
public final class DrawIcon {
    private static final int PX = 512;
    private static final Color COLD = new Color(0x155a70);
    private static final Color PAPER = new Color(0xf3f6f6);
    private static final Color WARM = new Color(0xe2a23b);

    private DrawIcon() {}

    public static void main(String[] words) throws IOException {
        BufferedImage image = new BufferedImage(PX, PX, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(COLD);
        pen.fill(new RoundRectangle2D.Double(16, 16, 480, 480, 96, 96));
        pen.setColor(PAPER);
        pen.setStroke(new BasicStroke(22, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D glass = new Path2D.Double();
        glass.moveTo(150, 180);
        glass.lineTo(362, 180);
        glass.lineTo(330, 412);
        glass.lineTo(182, 412);
        glass.closePath();
        pen.draw(glass);
        pen.draw(new Line2D.Double(200, 180, 256, 92));
        pen.draw(new Line2D.Double(312, 180, 256, 92));
        pen.setColor(WARM);
        pen.fill(new Ellipse2D.Double(190, 232, 132, 132));
        pen.setColor(PAPER);
        pen.setStroke(new BasicStroke(14, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int arm = 0; arm < 6; arm++) {
            Graphics2D turned = (Graphics2D) pen.create();
            turned.rotate(Math.toRadians(60 * arm), 256, 298);
            turned.draw(new Line2D.Double(256, 298, 256, 244));
            turned.draw(new Line2D.Double(256, 264, 242, 250));
            turned.draw(new Line2D.Double(256, 264, 270, 250));
            turned.dispose();
        }
        pen.dispose();
        ImageIO.write(image, "png", Path.of(words[0]).toFile());
    }
}
