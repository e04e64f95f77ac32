package org.siltbench.station.work.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.datamatrix.DataMatrixWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;

/** Codes in pictures: drawn by a general-purpose encoder, a little turned as in a hand. */
class PictureScanTest {

  private static final int MODULE = 9;

  @TempDir Path folder;

  private File picture(String text, double degrees) throws Exception {
    BitMatrix code = new DataMatrixWriter().encode(text, BarcodeFormat.DATA_MATRIX, 0, 0);
    BufferedImage picture = new BufferedImage(420, 420, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = picture.createGraphics();
    g.setColor(new Color(236, 233, 224));
    g.fillRect(0, 0, 420, 420);
    g.rotate(Math.toRadians(degrees), 210, 210);
    g.translate(110, 110);
    g.setColor(new Color(30, 30, 34));
    for (int y = 0; y < code.getHeight(); y++) {
      for (int x = 0; x < code.getWidth(); x++) {
        if (code.get(x, y)) {
          g.fillRect(x * MODULE, y * MODULE, MODULE, MODULE);
        }
      }
    }
    g.dispose();
    File file = folder.resolve("bag.png").toFile();
    ImageIO.write(picture, "png", file);
    return file;
  }

  @Test
  void the_code_of_a_bag_is_read_from_a_picture() throws Exception {
    assertEquals("K3DF0712R", PictureScan.read(picture("K3DF0712R", 0)));
    assertEquals("K3DF0712R", PictureScan.read(picture("K3DF0712R", 4)));
  }

  @Test
  void a_picture_without_a_code_and_a_file_that_is_none_are_refused() throws Exception {
    File blank = folder.resolve("blank.png").toFile();
    ImageIO.write(new BufferedImage(50, 50, BufferedImage.TYPE_INT_RGB), "png", blank);
    assertThrows(Problem.Refused.class, () -> PictureScan.read(blank));
    Path text = Files.writeString(folder.resolve("notes.txt"), "no picture");
    assertThrows(Problem.Refused.class, () -> PictureScan.read(text.toFile()));
    assertThrows(
        Problem.Outside.class, () -> PictureScan.read(folder.resolve("gone.png").toFile()));
  }
}
