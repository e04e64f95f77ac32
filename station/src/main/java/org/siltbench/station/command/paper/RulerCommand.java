package org.siltbench.station.command.paper;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.media.Calibration;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaText;
import org.siltbench.labels.media.Ruler;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.label.RulerTest;
import picocli.CommandLine.Option;

/** {@code ruler}: makes a printer true on one kind of label stock. */
final class RulerCommand implements Task {

  @Option(
      names = "--media",
      required = true,
      paramLabel = "FILE-or-name",
      description = "label stock")
  private String media = "";

  @Option(names = "--out", paramLabel = "F.pdf", description = "write the page with the rulers")
  private @Nullable Path out;

  @Option(
      names = "--measured",
      arity = "4",
      paramLabel = "MM",
      description = "ruler across, ruler down, corner from the left, corner from the top")
  private @Nullable List<Double> measured;

  @Option(names = "--save", paramLabel = "FILE", description = "the stock's file, made true")
  private @Nullable Path save;

  @Option(
      names = "--dpi",
      paramLabel = "N",
      description = "the printer's dots per inch; default: ${DEFAULT-VALUE}")
  private int dpi = 300;

  @Override
  public int run(Session session) {
    RulerTest test = RulerTest.of(media);
    Path page = out;
    List<Double> found = measured;
    if (page != null && found == null) {
      draw(session, test, page);
    } else if (page == null && found != null) {
      tell(session, test.madeTrue(found));
    } else {
      throw new Problem.WrongUse(
          "First the page, then what you measured.",
          "Give --out F.pdf, print it, then give --measured and four lengths.");
    }
    return 0;
  }

  private void draw(Session session, RulerTest test, Path page) {
    test.draw(page, dpi, session.clock());
    List<String> lengths = test.expected();
    session.fact("Print " + page + " at 100 % and measure:");
    session.fact("ruler across, should be " + lengths.get(0) + " mm");
    session.fact("ruler down, should be " + lengths.get(1) + " mm");
    session.fact("corner from the left, should be " + lengths.get(2) + " mm");
    session.fact("corner from the top, should be " + lengths.get(3) + " mm");
    session.document(Map.of("media", test.stock().name(), "out", page.toString()));
  }

  private void tell(Session session, Media stock) {
    Path file = save;
    if (file == null) {
      MediaText.write(stock).lines().forEach(session::fact);
    } else {
      RulerTest.save(stock, file);
      session.fact(stock.name() + " is now true in " + file);
    }
    Calibration c = stock.calibration();
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("media", stock.name());
    document.put("move_mm", List.of(Ruler.text(c.moveRight()), Ruler.text(c.moveDown())));
    document.put("scale", List.of(Ruler.text(c.scaleAcross()), Ruler.text(c.scaleDown())));
    session.document(document);
  }
}
