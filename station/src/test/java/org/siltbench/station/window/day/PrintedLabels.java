package org.siltbench.station.window.day;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.Scan;
import org.siltbench.station.command.weigh.LabelQueue;

/** What came out of the queue, read back by a decoder that is not ours. */
final class PrintedLabels {

  private PrintedLabels() {}

  /** The filters of the codes; each mass stood in the ledger when its label came out. */
  static List<String> filters(LabelQueue queue, Path job, int pages) throws IOException {
    List<String> filters = new ArrayList<>();
    for (int page = 1; page <= pages; page++) {
      BagCode bag = ((Scan.Bag) Scan.of(code(job, page))).code();
      assertTrue(stands(bag, queue.witness(job)), bag.toString());
      filters.add(bag.filter().text());
    }
    return filters;
  }

  private static boolean stands(BagCode bag, String ledger) {
    return ledger
        .lines()
        .filter(line -> line.contains("\"kind\":\"weighing\""))
        .filter(line -> line.contains("\"filter\":\"" + bag.filter().text() + '"'))
        .anyMatch(line -> line.contains("\"mass_g\":\"" + bag.grams() + '"'));
  }

  private static String code(Path job, int page) throws IOException {
    Path picture = job.resolveSibling("page-" + page);
    String at = "" + page;
    run(
        List.of("pdftoppm", "-r", "300", "-gray", "-png", "-singlefile", "-f", at, "-l", at),
        job.toString(),
        picture.toString());
    return run(List.of("dmtxread", "-n", "-N1", "-m", "3000"), picture + ".png").strip();
  }

  private static String run(List<String> program, String... files) throws IOException {
    List<String> words = new ArrayList<>(program);
    words.addAll(List.of(files));
    Process process =
        new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
