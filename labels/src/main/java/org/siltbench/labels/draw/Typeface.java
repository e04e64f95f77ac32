package org.siltbench.labels.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** One weight of the family, embedded as a subset in one document. */
final class Typeface {

  /**
   * Signs that the family lacks, in signs that it has; the minus is an en dash in width and height.
   */
  private static final Map<Integer, String> STAND_INS =
      Map.of(
          (int) '\u2212',
          "\u2013",
          (int) '≤',
          "<=",
          (int) '≥',
          ">=",
          (int) '≈',
          "~",
          (int) '→',
          "->",
          (int) '←',
          "<-",
          (int) '✓',
          "yes",
          (int) '√',
          "sqrt");

  /** Widths below this code point are kept: Latin, Greek and Cyrillic. */
  private static final int COMMON = 0x530;

  private final PDType0Font font;
  private final TrueTypeFont outlines;
  private final CmapLookup glyphs;
  private final double unitsPerEm;
  private final double[] widths = new double[COMMON];

  private Typeface(PDType0Font font, TrueTypeFont outlines) throws IOException {
    this.font = font;
    this.outlines = outlines;
    this.glyphs = outlines.getUnicodeCmapLookup();
    this.unitsPerEm = outlines.getUnitsPerEm();
  }

  static Typeface load(PDDocument document, String resource) throws IOException {
    try (InputStream in = Typeface.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException("the type file " + resource + " is missing from the program");
      }
      TrueTypeFont outlines = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // Ligatures would make copied text differ from what was printed.
      outlines.setEnableGsub(false);
      return new Typeface(PDType0Font.load(document, outlines, true), outlines);
    }
  }

  PDType0Font font() {
    return font;
  }

  /** The text as this family can set it: composed, and with a mark for what it has no glyph for. */
  String settable(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length());
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : c)
        .filter(c -> Character.getType(c) != Character.FORMAT)
        .forEach(c -> out.append(settable(c)));
    return out.toString();
  }

  private String settable(int c) {
    if (glyphs.getGlyphId(c) != 0) {
      return Character.toString(c);
    }
    return STAND_INS.getOrDefault(c, "?");
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~') {
        return false;
      }
    }
    return true;
  }

  /** Width of a settable text as a multiple of the type size. */
  double ems(String text) {
    double sum = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      sum += c < COMMON ? common(c) : em(c);
      i += Character.charCount(c);
    }
    return sum;
  }

  private double common(int c) {
    if (widths[c] == 0) {
      widths[c] = em(c);
    }
    return widths[c];
  }

  private double em(int codePoint) {
    try {
      return outlines.getAdvanceWidth(glyphs.getGlyphId(codePoint)) / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
