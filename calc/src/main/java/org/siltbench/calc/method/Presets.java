package org.siltbench.calc.method;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The preset texts that come with the program, as resources beside this class. */
public final class Presets {

  /** The keys, in the order they are listed to people. */
  public static final List<String> KEYS =
      List.of(
          "epa-160.2",
          "sm-2540d-21",
          "sm-2540d-22",
          "sm-2540d-23",
          "sm-2540d-24",
          "iso-11923",
          "en-872",
          "astm-d3977-b",
          "sm-2540e-22");

  private Presets() {}

  /**
   * The commented text of a preset: what an own method starts from.
   *
   * @throws IllegalArgumentException if there is no such preset
   */
  public static String text(String key) {
    if (!KEYS.contains(key)) {
      throw new IllegalArgumentException("no preset " + key);
    }
    try (InputStream in = Presets.class.getResourceAsStream(key + ".method")) {
      if (in == null) {
        throw new IllegalStateException("the preset " + key + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the preset " + key, e);
    }
  }

  static List<Method> all() {
    return KEYS.stream().map(key -> Method.parse(text(key))).toList();
  }
}
