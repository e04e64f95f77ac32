package org.siltbench.station.work.label;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.siltbench.labels.Imprint;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.Papers;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.media.MediaText;
import org.siltbench.labels.media.Ruler;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.work.paper.PaperFile;

/**
 * Makes a printer true on one kind of label stock: a page with rulers is printed and measured.
 *
 * @param stock the stock
 */
public record RulerTest(Media stock) {

  /** For a built-in stock's name, or a media file. */
  public static RulerTest of(String media) {
    try {
      return new RulerTest(MediaCatalog.find(media));
    } catch (PaperProblem e) {
      throw PaperFile.problem(e);
    }
  }

  /** Draws the page. */
  public void draw(Path page, int dpi, Clock clock) {
    OffsetDateTime now = OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    Imprint imprint = new Imprint("", "", null, 0, now, false, Imprint.PageSize.A4);
    PaperFile.write(page, to -> Papers.rulerPage(stock, dpi, imprint, to));
  }

  /** What the ruler would measure on a true printer, mm: across, down, from the left, the top. */
  public List<String> expected() {
    Ruler ruler = Ruler.of(stock);
    return List.of(
        Ruler.text(ruler.across()),
        Ruler.text(ruler.down()),
        Ruler.text(ruler.left()),
        Ruler.text(ruler.top()));
  }

  /**
   * The stock with what was measured made good.
   *
   * @param measured ruler across, ruler down, corner from the left, corner from the top, mm
   * @throws Problem.WrongUse if a length cannot be
   */
  public Media madeTrue(List<Double> measured) {
    try {
      return stock.withCalibration(Ruler.of(stock).calibration(measured));
    } catch (PaperProblem e) {
      throw PaperFile.problem(e);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(LabelSays.MEASURED, Elsewhere.words(e));
    }
  }

  /** Writes a stock's file. */
  public static void save(Media media, Path file) {
    byte[] text = MediaText.write(media).getBytes(StandardCharsets.UTF_8);
    PaperFile.write(file, to -> to.write(text));
  }
}
