package org.siltbench.station.said;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No German sentence is English, or was left as it was copied. */
class GermanBundlesTest {

  private static final Path ROOT =
      Path.of(System.getProperty("siltbench.root", ".."), "station", "src", "main", "resources");

  /** Short words of English that are no German. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "(?<![\\p{L}„.@/_=-])(the|and|of|is|not|with|from|this|that|are|were|has|have|its|it|be|"
              + "been|by|or|if|when|which|there|to|for|no|as|at|than|then|only|into|nothing)"
              + "(?![\\p{L}@/_=-])");

  @Test
  void no_german_sentence_has_an_english_word() throws IOException {
    List<String> found = new ArrayList<>();
    List<Path> files;
    try (Stream<Path> all = Files.walk(ROOT)) {
      files = all.filter(file -> file.toString().endsWith("_de.properties")).toList();
    }
    assertTrue(files.size() > 50, "only " + files.size() + " bundles were found");
    for (Path file : files) {
      Properties words = new Properties();
      try (Reader in = Files.newBufferedReader(file)) {
        words.load(in);
      }
      words.forEach(
          (key, text) -> {
            if (ENGLISH.matcher((String) text).find()) {
              found.add(ROOT.relativize(file) + ": " + key + '=' + text);
            }
          });
    }
    assertEquals(List.of(), found);
  }
}
