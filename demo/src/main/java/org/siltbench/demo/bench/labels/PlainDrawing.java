package org.siltbench.demo.bench.labels;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.siltbench.labels.draw.Paper;

/** PDFBox drawing recorded steps with nothing else: no layout, no codes, no measuring. */
final class PlainDrawing {

  private final PDFont regular;
  private final PDFont bold;

  private PlainDrawing(PDDocument document) throws IOException {
    this.regular = font(document, "NotoSans-SemiCondensed.ttf");
    this.bold = font(document, "NotoSans-SemiCondensedBold.ttf");
  }

  private static PDFont font(PDDocument document, String name) throws IOException {
    try (InputStream in = Paper.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("missing: " + name);
      }
      TrueTypeFont outlines = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // As in our papers: with glyph substitution PDFBox is several times slower.
      outlines.setEnableGsub(false);
      return PDType0Font.load(document, outlines, true);
    }
  }

  static byte[] of(Recorded recorded) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PlainDrawing drawing = new PlainDrawing(document);
      for (List<Recorded.Step> steps : recorded.pages()) {
        PDPage page = new PDPage(new PDRectangle(recorded.width(), recorded.height()));
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
          for (Recorded.Step step : steps) {
            drawing.draw(stream, step);
          }
        }
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out, CompressParameters.NO_COMPRESSION);
      return out.toByteArray();
    }
  }

  private void draw(PDPageContentStream to, Recorded.Step step) throws IOException {
    List<Float> n = step.numbers();
    switch (step.operator()) {
      case "re" -> to.addRect(n.get(0), n.get(1), n.get(2), n.get(3));
      case "f" -> to.fill();
      case "g" -> to.setNonStrokingColor(n.get(0));
      case "G" -> to.setStrokingColor(n.get(0));
      case "w" -> to.setLineWidth(n.get(0));
      case "m" -> to.moveTo(n.get(0), n.get(1));
      case "l" -> to.lineTo(n.get(0), n.get(1));
      case "S" -> to.stroke();
      case "BT" -> to.beginText();
      case "ET" -> to.endText();
      case "Td" -> to.newLineAtOffset(n.get(0), n.get(1));
      case "Tf" -> to.setFont(step.text().equals("bold") ? bold : regular, n.get(0));
      case "Tj" -> to.showText(step.text());
      default -> throw new IOException("a step that is not known here: " + step.operator());
    }
  }
}
