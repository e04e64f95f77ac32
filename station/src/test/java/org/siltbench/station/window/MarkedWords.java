package org.siltbench.station.window;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Properties;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.ReasonCode;
import org.siltbench.station.said.Words;

/**
 * English in which every word that comes from a bundle stands between two marks that nobody sees.
 * What a screen then shows without marks came from no bundle: it is a person's own text, a figure,
 * or a sentence that a window in another language would show in English.
 */
public final class MarkedWords {

  /** The language: English, marked. */
  public static final Locale LANGUAGE =
      new Locale.Builder().setLanguage("en").setVariant("marked").build();

  static final char OPEN = '\u2062';
  static final char CLOSE = '\u2063';

  private static final Path ROOT =
      Path.of(System.getProperty("siltbench.root", ".."), "station", "src", "main", "resources");
  private static final Path MADE = Path.of("target", "test-classes");

  static {
    try {
      bundles();
      reasons();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private MarkedWords() {}

  /** Without the marks. */
  public static String plain(String text) {
    return text.replace(String.valueOf(OPEN), "").replace(String.valueOf(CLOSE), "");
  }

  /** What stands outside of the marks. */
  static String unmarked(String text) {
    StringBuilder out = new StringBuilder();
    int depth = 0;
    for (char c : text.toCharArray()) {
      if (c == OPEN) {
        depth++;
        out.append('\n');
      } else if (c == CLOSE) {
        depth--;
      } else if (depth == 0) {
        out.append(c);
      }
    }
    return out.toString();
  }

  private static void bundles() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT)) {
      for (Path file :
          files.filter(f -> f.toString().matches(".*(says|texts)\\.properties")).toList()) {
        Properties words = read(file);
        String name = file.getFileName().toString().replace(".properties", "");
        Path atTheScreen = file.resolveSibling(name + '_' + Words.SCREEN_ENGLISH + ".properties");
        if (Files.exists(atTheScreen)) {
          words.putAll(read(atTheScreen));
        }
        Properties german = read(file.resolveSibling(name + "_de.properties"));
        words.replaceAll(
            (key, text) -> toldAnew(text, german.get(key)) ? OPEN + "{0}" + CLOSE : text);
        write(ROOT.relativize(file).resolveSibling(name), words);
      }
    }
  }

  /** English passes on another room's sentence here, and German has one of its own for it. */
  private static boolean toldAnew(Object english, @Nullable Object german) {
    return english.equals("{0}") && german instanceof String own && !own.contains("{0}");
  }

  private static void reasons() throws IOException {
    for (JavaClass one :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(
                "org.siltbench.calc", "org.siltbench.balance", "org.siltbench.labels")) {
      if (one.isEnum() && one.isAssignableTo(ReasonCode.class)) {
        Properties words = new Properties();
        for (Object constant : one.reflect().getEnumConstants()) {
          ReasonCode code = (ReasonCode) constant;
          String key = code.name().toLowerCase(Locale.ROOT).replace('_', '.');
          words.setProperty(key, code.english());
        }
        String name = one.getSimpleName().toLowerCase(Locale.ROOT);
        write(Path.of("org", "siltbench", "station", "elsewhere", name), words);
      }
    }
  }

  private static Properties read(Path file) throws IOException {
    Properties words = new Properties();
    try (var in = Files.newBufferedReader(file)) {
      words.load(in);
    }
    return words;
  }

  private static void write(Path bundle, Properties words) throws IOException {
    words.replaceAll((key, text) -> marked((String) text));
    Path file = MADE.resolve(bundle + "_" + LANGUAGE + ".properties");
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path part = Files.createTempFile(file.toAbsolutePath().getParent(), "marked", ".part");
    try (var out = Files.newBufferedWriter(part)) {
      words.store(out, null);
    }
    try {
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Marks around all that is not a gap; a gap that chooses its words is marked as a whole. */
  static String marked(String text) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    if (text.indexOf(OPEN) >= 0) {
      return text;
    }
    while (at < text.length()) {
      int gap = text.indexOf('{', at);
      if (gap < 0) {
        return out.append(between(text.substring(at))).toString();
      }
      int end = end(text, gap);
      String inner = text.substring(gap, end);
      out.append(between(text.substring(at, gap)));
      out.append(inner.contains("choice") ? between(inner) : inner);
      at = end;
    }
    return out.toString();
  }

  private static int end(String text, int gap) {
    int depth = 0;
    for (int i = gap; i < text.length(); i++) {
      depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
      if (depth == 0) {
        return i + 1;
      }
    }
    return text.length();
  }

  private static String between(String text) {
    return text.isEmpty() ? "" : OPEN + text + CLOSE;
  }
}
