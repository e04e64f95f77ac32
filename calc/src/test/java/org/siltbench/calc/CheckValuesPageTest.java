package org.siltbench.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keeps docs/check-values.md true. */
final class CheckValuesPageTest {

  private static final Path ROOT = Path.of(System.getProperty("siltbench.root", ".."));

  private record Row(int values, String test) {}

  private static List<Row> rows(String section) {
    List<Row> rows = new ArrayList<>();
    for (String line : section.lines().filter(l -> l.endsWith("` |")).toList()) {
      String[] cells = line.split("\\|");
      String test = cells[cells.length - 1].strip().replace("`", "");
      rows.add(new Row(Integer.parseInt(cells[2].strip()), test));
    }
    return rows;
  }

  private static Map<String, String> sources() throws IOException {
    Map<String, String> out = new HashMap<>();
    for (String module : List.of("calc", "balance-drivers", "labels")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
        for (Path file :
            files
                .filter(
                    f ->
                        f.toString().endsWith("Test.java")
                            || f.toString().endsWith("Properties.java"))
                .toList()) {
          String name = file.getFileName().toString();
          out.put(name.substring(0, name.length() - 5), Files.readString(file));
        }
      }
    }
    return out;
  }

  @Test
  void every_row_names_a_test_that_is_there_and_ours_are_as_many_as_the_published()
      throws IOException {
    String page = Files.readString(ROOT.resolve("docs/check-values.md"));
    List<Row> published =
        rows(page.substring(page.indexOf("## Published"), page.indexOf("## Ours")));
    List<Row> ours = rows(page.substring(page.indexOf("## Ours")));
    Map<String, String> sources = sources();
    Set<String> own = new HashSet<>();
    for (Row row : Stream.concat(published.stream(), ours.stream()).toList()) {
      String[] name = row.test().split("\\.");
      String source = sources.getOrDefault(name[0], "");
      assertTrue(source.contains("void " + name[1] + "("), "no test " + row.test());
    }
    ours.forEach(row -> assertTrue(own.add(row.test()), "named twice: " + row.test()));
    int first = published.stream().mapToInt(Row::values).sum();
    int second = ours.stream().mapToInt(Row::values).sum();
    assertTrue(published.size() > 50 && ours.size() > 40, published.size() + ", " + ours.size());
    assertTrue(second >= first, first + " published, " + second + " ours");
    String stated = "Published: " + first + " values. Ours: " + second + " values.";
    assertEquals(1, page.split(stated, -1).length - 1, stated);
  }

  @Test
  void every_hostile_case_names_a_test_that_is_there() throws IOException {
    String page = Files.readString(ROOT.resolve("docs/uncertainty.md"));
    String section = page.substring(page.indexOf("## Hostile cases"), page.indexOf("## Measured"));
    List<String> cases = section.lines().filter(l -> l.endsWith("` |")).toList();
    Map<String, String> sources = sources();
    for (String line : cases) {
      String[] name =
          line.substring(line.lastIndexOf("| `") + 3, line.lastIndexOf('`')).split("\\.");
      assertTrue(sources.getOrDefault(name[0], "").contains("void " + name[1] + "("), line);
    }
    assertEquals(8, cases.size());
  }
}
