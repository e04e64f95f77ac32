package org.siltbench.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What calc offers is used: each type is named by another file of the product, beyond comments. */
final class NothingIdleTest {

  private static final Path ROOT = Path.of(System.getProperty("siltbench.root", ".."));
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|//[^\n]*");

  private static Map<Path, String> sources() throws IOException {
    Map<Path, String> out = new HashMap<>();
    for (String module : List.of("calc", "balance-drivers", "labels", "station", "demo")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          out.put(file, COMMENT.matcher(Files.readString(file)).replaceAll(""));
        }
      }
    }
    return out;
  }

  @Test
  void every_type_has_a_user() throws IOException {
    Map<Path, String> sources = sources();
    List<String> idle = new ArrayList<>();
    for (Path file : sources.keySet()) {
      String name = file.getFileName().toString().replace(".java", "");
      if (file.startsWith(ROOT.resolve("calc")) && !name.equals("package-info")) {
        Pattern word = Pattern.compile("\\b" + name + "\\b");
        boolean used =
            sources.entrySet().stream()
                .anyMatch(e -> !e.getKey().equals(file) && word.matcher(e.getValue()).find());
        if (!used) {
          idle.add(name);
        }
      }
    }
    assertEquals(List.of(), idle);
  }
}
