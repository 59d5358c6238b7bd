package trialwood.note;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Iterator;
import java.util.Set;
import java.util.TimeZone;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import org.jspecify.annotations.Nullable;
import trialwood.record.Refused;

/**
 * Reads what a phone sends as a picture and draws it anew: upright, small enough to keep, and
 * without the place and whatever else the file carried. A file that only claims to be a picture is
 * refused, and so is one whose picture would fill the memory.
 */
public final class Darkroom {

  static final int LONGEST = 1600;
  static final int SMALL = 320;

  /** Sixty million pixels: more than phones take. */
  private static final long MOST_PIXELS = 60_000_000L;

  /** The database keeps a picture of at most a mebibyte. */
  private static final int MOST_BYTES = 1_000_000;

  private static final Set<String> FORMATS = Set.of("JPEG", "png");

  private Darkroom() {}

  /**
   * @throws Refused with the field {@code photographs} when it is no picture that can be read
   */
  public static Developed develop(byte[] file) {
    try {
      BufferedImage upright = turned(drawn(read(file), LONGEST), orientation(file));
      return new Developed(
          jpeg(upright),
          jpeg(drawn(upright, SMALL)),
          upright.getWidth(),
          upright.getHeight(),
          takenOn(file));
    } catch (IOException | RuntimeException unreadable) {
      if (unreadable instanceof Refused refused) {
        throw refused;
      }
      throw new Refused("photographs", "This picture cannot be read; the file may be damaged.");
    }
  }

  private static BufferedImage read(byte[] file) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      ImageReader reader = readers.hasNext() ? readers.next() : null;
      if (reader == null || !FORMATS.contains(reader.getFormatName())) {
        throw new Refused(
            "photographs", "Choose JPEG or PNG pictures; a phone can be set to take JPEG.");
      }
      try {
        reader.setInput(in, true, true);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
          throw new Refused("photographs", "This picture is too large: more than 60 megapixels.");
        }
        ImageReadParam param = reader.getDefaultReadParam();
        int every = Math.max(1, Math.max(width, height) / (2 * LONGEST));
        param.setSourceSubsampling(every, every, 0, 0);
        return reader.read(0, param);
      } finally {
        reader.dispose();
      }
    }
  }

  /** On white, at most so many pixels long. */
  private static BufferedImage drawn(BufferedImage source, int longest) {
    double by = Math.min(1, (double) longest / Math.max(source.getWidth(), source.getHeight()));
    int width = Math.max(1, (int) Math.round(source.getWidth() * by));
    int height = Math.max(1, (int) Math.round(source.getHeight() * by));
    BufferedImage canvas = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D brush = canvas.createGraphics();
    brush.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    brush.drawImage(source, 0, 0, width, height, Color.WHITE, null);
    brush.dispose();
    return canvas;
  }

  /** Turned and mirrored as the camera was held; orientations as TIFF 6.0 numbers them. */
  private static BufferedImage turned(BufferedImage source, int orientation) {
    if (orientation < 2 || orientation > 8) {
      return source;
    }
    int w = source.getWidth();
    int h = source.getHeight();
    boolean lying = orientation > 4;
    AffineTransform turn =
        switch (orientation) {
          case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
          case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
          case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
          case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
          case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
          case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
          default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
    BufferedImage canvas =
        new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
    Graphics2D brush = canvas.createGraphics();
    brush.drawImage(source, turn, null);
    brush.dispose();
    return canvas;
  }

  private static byte[] jpeg(BufferedImage picture) throws IOException {
    for (float quality = 0.85f; ; quality -= 0.15f) {
      byte[] bytes = jpeg(picture, quality);
      if (bytes.length <= MOST_BYTES || quality < 0.3f) {
        return bytes;
      }
    }
  }

  private static byte[] jpeg(BufferedImage picture, float quality) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static int orientation(byte[] file) {
    ExifIFD0Directory camera = metadata(file).getFirstDirectoryOfType(ExifIFD0Directory.class);
    try {
      return camera != null && camera.containsTag(ExifIFD0Directory.TAG_ORIENTATION)
          ? camera.getInt(ExifIFD0Directory.TAG_ORIENTATION)
          : 1;
    } catch (MetadataException unreadable) {
      return 1;
    }
  }

  private static @Nullable LocalDate takenOn(byte[] file) {
    ExifSubIFDDirectory shot = metadata(file).getFirstDirectoryOfType(ExifSubIFDDirectory.class);
    Date taken = shot == null ? null : shot.getDateOriginal(TimeZone.getTimeZone("UTC"));
    return taken == null ? null : taken.toInstant().atZone(ZoneOffset.UTC).toLocalDate();
  }

  private static Metadata metadata(byte[] file) {
    try {
      return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
    } catch (ImageProcessingException | IOException | RuntimeException none) {
      return new Metadata();
    }
  }
}
