package trialwood.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DarkroomTest {

  private static BufferedImage seen(byte[] picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(picture));
  }

  private static boolean isRed(BufferedImage picture, int x, int y) {
    Color color = new Color(picture.getRGB(x, y));
    return color.getRed() > 200 && color.getBlue() < 60;
  }

  /** Which corner shows what was stored at the top left: TIFF 6.0, tag 274. */
  @ParameterizedTest
  @CsvSource({
    "1,80,40,5,20", "2,80,40,75,20", "3,80,40,75,20", "4,80,40,5,20",
    "5,40,80,20,5", "6,40,80,20,5", "7,40,80,20,75", "8,40,80,20,75"
  })
  void a_picture_stands_upright_however_the_phone_was_held(
      int orientation, int width, int height, int redX, int redY) throws IOException {
    Developed developed = Darkroom.develop(Pictures.held(orientation, 80, 40));
    BufferedImage upright = seen(developed.picture());
    assertThat(upright.getWidth()).isEqualTo(width).isEqualTo(developed.width());
    assertThat(upright.getHeight()).isEqualTo(height).isEqualTo(developed.height());
    assertThat(isRed(upright, redX, redY)).isTrue();
    assertThat(isRed(upright, width - 1 - redX, height - 1 - redY)).isFalse();
  }

  @Test
  void a_large_picture_is_made_small_enough_to_keep() throws IOException {
    Developed developed = Darkroom.develop(Pictures.of("jpg", 4000, 3000));
    assertThat(developed.width()).isEqualTo(1600);
    assertThat(developed.height()).isEqualTo(1200);
    assertThat(developed.picture().length).isLessThan(1_000_000);
    assertThat(seen(developed.small()).getWidth()).isEqualTo(320);
  }

  @Test
  void nothing_that_the_camera_wrote_is_kept() {
    byte[] kept = Darkroom.develop(Pictures.held(6, 80, 40)).picture();
    assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
  }

  @Test
  void a_png_is_kept_as_a_jpeg() throws IOException {
    byte[] kept = Darkroom.develop(Pictures.of("png", 80, 40)).picture();
    assertThat(kept).startsWith(0xFF, 0xD8);
    assertThat(isRed(seen(kept), 5, 20)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "GIF89a not kept", "<svg onload='x()'/>", "%PDF-1.7"})
  void what_is_no_jpeg_or_png_is_refused(String file) {
    assertThatThrownBy(() -> Darkroom.develop(file.getBytes(StandardCharsets.US_ASCII)))
        .hasMessageContaining("JPEG or PNG");
  }

  @Test
  void a_picture_that_would_fill_the_memory_is_refused_by_its_head() {
    assertThatThrownBy(() -> Darkroom.develop(Pictures.claiming(100_000, 100_000)))
        .hasMessageContaining("too large");
  }

  @Test
  void a_damaged_picture_is_refused() {
    assertThatThrownBy(() -> Darkroom.develop(Pictures.claiming(400, 400)))
        .hasMessageContaining("cannot be read");
  }
}
