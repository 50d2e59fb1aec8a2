import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;

/** The icon in the format of the platform: Windows and macOS take PNG in a small container. */
final class IconFile {
    private IconFile() {}

    static Path ico(Path png, Path folder) throws IOException {
        byte[] picture = scaled(png, 256);
        ByteBuffer file = ByteBuffer.allocate(22 + picture.length).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0).putShort((short) 1).putShort((short) 1);
        file.put((byte) 0).put((byte) 0).put((byte) 0).put((byte) 0);
        file.putShort((short) 1).putShort((short) 32).putInt(picture.length).putInt(22);
        file.put(picture);
        return Files.write(folder.resolve("coldwright.ico"), file.array());
    }

    static Path icns(Path png, Path folder) throws IOException {
        byte[] picture = Files.readAllBytes(png);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(file);
        data.writeBytes("icns");
        data.writeInt(picture.length + 16);
        data.writeBytes("ic09");
        data.writeInt(picture.length + 8);
        data.write(picture);
        return Files.write(folder.resolve("coldwright.icns"), file.toByteArray());
    }

    private static byte[] scaled(Path png, int px) throws IOException {
        BufferedImage from = ImageIO.read(png.toFile());
        BufferedImage to = new BufferedImage(px, px, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = to.createGraphics();
        pen.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.drawImage(from, 0, 0, px, px, null);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(to, "png", bytes);
        return bytes.toByteArray();
    }
}
