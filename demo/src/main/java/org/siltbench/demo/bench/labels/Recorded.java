package org.siltbench.demo.bench.labels;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The drawing steps of a finished document, page by page, so that they can be drawn again. */
record Recorded(float width, float height, List<List<Step>> pages) {

  /**
   * One drawing step.
   *
   * @param operator the operator's name in the page's content
   * @param numbers its numbers
   * @param text its text, or a font's name
   */
  record Step(String operator, List<Float> numbers, String text) {}

  static Recorded of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<List<Step>> pages = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        pages.add(steps(page));
      }
      PDPage first = document.getPage(0);
      return new Recorded(first.getMediaBox().getWidth(), first.getMediaBox().getHeight(), pages);
    }
  }

  private static List<Step> steps(PDPage page) throws IOException {
    List<Step> out = new ArrayList<>();
    List<COSBase> operands = new ArrayList<>();
    Hand hand = new Hand(page);
    for (Object token : new PDFStreamParser(page).parse()) {
      if (token instanceof Operator operator) {
        out.add(hand.step(operator.getName(), operands));
        operands.clear();
      } else {
        operands.add((COSBase) token);
      }
    }
    return out;
  }

  /** Follows the font while a page is read. */
  private static final class Hand {

    private final PDPage page;
    private String fontName = "";

    Hand(PDPage page) {
      this.page = page;
    }

    Step step(String operator, List<COSBase> operands) throws IOException {
      List<Float> numbers = new ArrayList<>();
      String text = "";
      for (COSBase operand : operands) {
        if (operand instanceof COSNumber number) {
          numbers.add(number.floatValue());
        } else if (operand instanceof COSName name) {
          text = name.getName();
          fontName = operator.equals("Tf") ? text : fontName;
          text = operator.equals("Tf") && isBold() ? "bold" : text;
        } else if (operand instanceof COSString shown) {
          text = unicode(shown.getBytes());
        }
      }
      return new Step(operator, List.copyOf(numbers), text);
    }

    private PDFont font() throws IOException {
      return page.getResources().getFont(COSName.getPDFName(fontName));
    }

    private boolean isBold() throws IOException {
      return font().getName().contains("Bold");
    }

    private String unicode(byte[] codes) throws IOException {
      StringBuilder out = new StringBuilder();
      for (int i = 0; i < codes.length; i += 2) {
        out.append(font().toUnicode(((codes[i] & 0xff) << 8) | (codes[i + 1] & 0xff)));
      }
      return out.toString();
    }
  }
}
