package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.labels.media.MediaCatalog;

class RulerCommandTest {

  @TempDir Path folder;
  private CommandLab lab;

  @BeforeEach
  void setUp() {
    lab = new CommandLab(folder.resolve("lab"));
  }

  @Test
  void aRulerPageIsDrawnWithoutALab() throws Exception {
    Path page = folder.resolve("ruler.pdf");
    lab.ok("ruler", "--media", "sheet-a4-70x37", "--out", page.toString());
    assertTrue(Files.size(page) > 2000);
  }

  @Test
  void whatWasMeasuredBecomesAStockFileThatIsTrue() {
    Path file = folder.resolve("drawer.media");
    lab.ok(
        "ruler",
        "--media",
        "sheet-a4-70x37",
        "--measured",
        "188.1",
        "277.2",
        "9.9",
        "9.9",
        "--save",
        file.toString());
    assertEquals(1 / 0.99, MediaCatalog.read(file).calibration().scaleAcross(), 1e-5);
  }
}
