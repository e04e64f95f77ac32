package org.siltbench.labels.code;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.Writer;
import com.google.zxing.WriterException;
import com.google.zxing.datamatrix.DataMatrixWriter;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.EnumMap;
import java.util.Map;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.PapersSay;

/** Turns text into a grid of modules. */
public final class Codes {

  private Codes() {}

  /**
   * Encodes a text.
   *
   * @throws PaperProblem if the code cannot carry it
   */
  public static CodeGrid encode(CodeKind kind, String text) {
    try {
      return switch (kind) {
        case DATA_MATRIX -> grid(kind, new DataMatrixWriter(), BarcodeFormat.DATA_MATRIX, text);
        case QR -> grid(kind, new QRCodeWriter(), BarcodeFormat.QR_CODE, text);
        case CODE_128 -> grid(kind, new Code128Writer(), BarcodeFormat.CODE_128, text);
      };
    } catch (WriterException | IllegalArgumentException e) {
      throw new PaperProblem(
          PapersSay.CODE_FULL.with(text, kind.word()),
          PapersSay.NOTHING_PRINTED.with(),
          PapersSay.OTHER_CODE.with(),
          e);
    }
  }

  private static CodeGrid grid(CodeKind kind, Writer writer, BarcodeFormat format, String text)
      throws WriterException {
    return CodeGrid.of(kind, writer.encode(text, format, 0, 0, hints(kind)));
  }

  private static Map<EncodeHintType, Object> hints(CodeKind kind) {
    Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
    hints.put(EncodeHintType.MARGIN, 0);
    if (kind == CodeKind.DATA_MATRIX) {
      hints.put(EncodeHintType.DATA_MATRIX_SHAPE, SymbolShapeHint.FORCE_SQUARE);
    } else if (kind == CodeKind.QR) {
      hints.put(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M);
    }
    return hints;
  }
}
