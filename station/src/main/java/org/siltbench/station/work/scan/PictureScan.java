package org.siltbench.station.work.scan;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/** Reads the code in a picture of a bag. */
public final class PictureScan {

  private static final Map<DecodeHintType, Object> HINTS =
      Map.of(
          DecodeHintType.TRY_HARDER,
          true,
          DecodeHintType.POSSIBLE_FORMATS,
          List.of(BarcodeFormat.DATA_MATRIX, BarcodeFormat.QR_CODE, BarcodeFormat.CODE_128));

  private PictureScan() {}

  /**
   * The text of the code in a picture file.
   *
   * @throws Problem.Refused if it is no picture or no code can be read in it
   * @throws Problem.Outside if the file cannot be read
   */
  public static String read(File file) {
    try {
      BufferedImage picture = ImageIO.read(file);
      if (picture == null) {
        throw new Problem.Refused(ScanSays.NO_PICTURE, file.getName());
      }
      return read(picture);
    } catch (NotFoundException e) {
      throw new Problem.Refused(ScanSays.NO_CODE, file.getName());
    } catch (IOException e) {
      throw new Problem.Outside(e, ScanSays.UNREADABLE, file, Elsewhere.words(e));
    }
  }

  private static String read(BufferedImage picture) throws NotFoundException {
    int w = picture.getWidth();
    int h = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, w, h, null, 0, w);
    BinaryBitmap bits = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(w, h, pixels)));
    return new MultiFormatReader().decode(bits, HINTS).getText();
  }
}
