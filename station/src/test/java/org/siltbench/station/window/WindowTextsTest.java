package org.siltbench.station.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of the window: complete in both languages, all in use, none in the views. */
class WindowTextsTest {

  private static final Path ROOT =
      Path.of(System.getProperty("siltbench.root", ".."), "station", "src", "main");
  private static final String WINDOW = "org/siltbench/station/window";
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern SENTENCE =
      Pattern.compile("[A-ZÄÖÜ]?[a-zäöü]+ [a-zäöü]+.*|[A-Z][a-z]+");

  @Test
  void both_languages_have_the_same_keys_and_gaps() throws IOException {
    for (Path english : bundles()) {
      Properties en = read(english);
      Properties de = read(german(english));
      assertEquals(
          new TreeSet<>(en.stringPropertyNames()),
          new TreeSet<>(de.stringPropertyNames()),
          english.toString());
      for (String key : en.stringPropertyNames()) {
        assertEquals(gaps(en, key), gaps(de, key), english + ": " + key);
      }
    }
  }

  private static int gaps(Properties words, String key) {
    String text = words.getProperty(key);
    return text.contains("{") ? new MessageFormat(text).getFormatsByArgumentIndex().length : 0;
  }

  @Test
  void no_key_is_unused() throws IOException {
    List<String> unused = new ArrayList<>();
    for (Path english : bundles()) {
      String code = code(english.getParent());
      for (String key : read(english).stringPropertyNames()) {
        if (!inUse(key, code)) {
          unused.add(english.getParent().getFileName() + ": " + key);
        }
      }
    }
    assertEquals(List.of(), unused);
  }

  /**
   * In use as it is, or as a prefix that ends with a dot, to which a word is added; the heads of a
   * grid are named by their word alone.
   */
  private static boolean inUse(String key, String code) {
    String word = key.startsWith("column.") ? key.substring("column.".length()) : key;
    if (code.contains('"' + word + '"')) {
      return true;
    }
    int dot = key.lastIndexOf('.');
    return dot > 0 && code.contains('"' + key.substring(0, dot + 1) + '"');
  }

  @Test
  void views_carry_no_sentences() throws IOException {
    List<String> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(ROOT.resolve("java").resolve(WINDOW))) {
      for (Path file :
          files.filter(f -> f.toString().matches(".*(View|Pane|Bar|Side|Rail)\\.java")).toList()) {
        Matcher literals = LITERAL.matcher(Files.readString(file).replaceAll("(?m)^import.*$", ""));
        while (literals.find()) {
          if (SENTENCE.matcher(literals.group(1)).matches()) {
            found.add(file.getFileName() + ": " + literals.group());
          }
        }
      }
    }
    assertEquals(List.of(), found);
  }

  private static List<Path> bundles() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT.resolve("resources").resolve(WINDOW))) {
      List<Path> found = files.filter(f -> f.endsWith("texts.properties")).toList();
      assertTrue(found.size() >= 3, "bundles: " + found);
      return found;
    }
  }

  private static Path german(Path english) {
    return english.resolveSibling("texts_de.properties");
  }

  private static Properties read(Path file) throws IOException {
    Properties words = new Properties();
    try (Reader in = Files.newBufferedReader(file)) {
      words.load(in);
    }
    return words;
  }

  /** All code of the package, and of the window's root package. */
  private static String code(Path resources) throws IOException {
    Path java = ROOT.resolve("java").resolve(ROOT.resolve("resources").relativize(resources));
    StringBuilder all = new StringBuilder();
    for (Path folder : List.of(java, ROOT.resolve("java").resolve(WINDOW))) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          all.append(Files.readString(file));
        }
      }
    }
    return all.toString();
  }
}
