package org.siltbench.labels;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.*;

class PreviewTest {
  @Test
  void preview() throws Exception {
    Path dir = Path.of("/tmp/lab-preview");
    Files.createDirectories(dir);
    for (Media m : MediaCatalog.builtIn()) {
      for (CodeKind k : CodeKind.values()) {
        for (boolean p : new boolean[] {false, true}) {
          Path f = dir.resolve(m.name() + "-" + k.word() + (p ? "-p" : "") + ".pdf");
          try (OutputStream out = Files.newOutputStream(f)) {
            Papers.labels(
                new LabelRun(AlderFork.labels(24, p), m, k, 203, 1, false),
                AlderFork.imprint(p),
                out);
          } catch (PaperProblem e) {
            System.out.println(f + " " + e.getMessage());
            Files.delete(f);
          }
        }
      }
    }
  }
}
