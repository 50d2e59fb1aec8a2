package coldwright.tour;

import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.paint.Color;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.imageio.ImageIO;

/** Writes what the window shows into a folder. */
record Pictures(Path folder) {
    private static final int GAP_PX = 16;

    Pictures {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The whole of some nodes side by side, however far they reach out of sight. */
    void write(String name, List<Node> nodes) throws Exception {
        List<Image> seen =
                Hands.ask(
                        () -> {
                            SnapshotParameters paper = new SnapshotParameters();
                            paper.setFill(Color.web("#d8dee2"));
                            return nodes.stream()
                                    .filter(node -> node.getLayoutBounds().getHeight() > 1)
                                    .map(node -> (Image) node.snapshot(paper, null))
                                    .toList();
                        });
        save(name, seen);
    }

    /** What stands in the window. */
    void write(String name, Scene scene) throws Exception {
        save(name, List.of(Hands.ask(() -> scene.snapshot(null))));
    }

    private void save(String name, List<Image> images) throws IOException {
        int width = images.stream().mapToInt(one -> (int) one.getWidth() + GAP_PX).sum() - GAP_PX;
        int height = images.stream().mapToInt(one -> (int) one.getHeight()).max().orElse(1);
        BufferedImage all =
                new BufferedImage(Math.max(1, width), height, BufferedImage.TYPE_INT_RGB);
        int x = 0;
        for (Image image : images) {
            int w = (int) image.getWidth();
            int h = (int) image.getHeight();
            int[] pixels = new int[w * h];
            image.getPixelReader()
                    .getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
            all.setRGB(x, 0, w, h, pixels, 0, w);
            x += w + GAP_PX;
        }
        ImageIO.write(all, "png", folder.resolve(name + ".png").toFile());
    }
}
