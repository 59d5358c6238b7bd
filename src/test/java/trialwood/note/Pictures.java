package trialwood.note;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import javax.imageio.ImageIO;

/** Pictures to send: red on the left, blue on the right. */
public final class Pictures {

  private Pictures() {}

  public static byte[] of(String format, int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D brush = picture.createGraphics();
    brush.setColor(Color.RED);
    brush.fillRect(0, 0, width / 2, height);
    brush.setColor(Color.BLUE);
    brush.fillRect(width / 2, 0, width - width / 2, height);
    brush.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, format, bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /** A JPEG whose camera was held so; orientations as TIFF 6.0 numbers them. */
  static byte[] held(int orientation, int width, int height) {
    byte[] jpeg = of("jpg", width, height);
    byte[] tiff =
        ByteBuffer.allocate(26)
            .put(new byte[] {'M', 'M', 0, 42})
            .putInt(8)
            .putShort((short) 1)
            .putShort((short) 0x0112)
            .putShort((short) 3)
            .putInt(1)
            .putShort((short) orientation)
            .putShort((short) 0)
            .putInt(0)
            .array();
    return ByteBuffer.allocate(jpeg.length + tiff.length + 10)
        .put(jpeg, 0, 2)
        .putShort((short) 0xFFE1)
        .putShort((short) (tiff.length + 8))
        .put(new byte[] {'E', 'x', 'i', 'f', 0, 0})
        .put(tiff)
        .put(jpeg, 2, jpeg.length - 2)
        .array();
  }

  /** The head of a PNG that claims to be so large. */
  static byte[] claiming(int width, int height) {
    byte[] png = of("png", 4, 4);
    ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
    return png;
  }
}
