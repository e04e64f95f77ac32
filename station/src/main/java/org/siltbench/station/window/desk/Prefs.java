package org.siltbench.station.window.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;
import org.siltbench.station.ledger.RealDisk;

/**
 * What this bench likes: balance, printer, language, look. Words under names, kept in {@code
 * window.json} of the lab folder; it is no evidence and not in the ledger.
 */
public final class Prefs {

  /** The names. */
  public enum Name {
    BALANCE("balance", ""),
    WEIGHT("check_weight", ""),
    PRINTER("printer", ""),
    MEDIA("media", "roll-50x25"),
    DPI("printer_dpi", "300"),
    LANGUAGE("language", ""),
    THEME("theme", "light"),
    ZOOM("zoom", "100"),
    SOUND("sound", "on"),
    KEY("one_key", "F12"),
    SCANNER("scanner", ""),
    REPEAT("repeat_every", "10"),
    PAPER_PRINTER("paper_printer", "");

    private final String word;
    private final String usual;

    Name(String word, String usual) {
      this.word = word;
      this.usual = usual;
    }
  }

  private static final String FILE = "window.json";

  private final Path file;
  private final Map<String, String> words = new TreeMap<>();

  private Prefs(Path file) {
    this.file = file;
  }

  /** Reads them; what is missing or cannot be read is as usual. */
  public static Prefs of(Path labFolder) {
    Prefs prefs = new Prefs(labFolder.resolve(FILE));
    if (Files.exists(prefs.file)) {
      prefs.read();
    }
    return prefs;
  }

  private void read() {
    try {
      Map<String, @Nullable Object> kept = Json.object(Files.readAllBytes(file));
      kept.forEach(
          (name, value) -> {
            if (value instanceof String text) {
              words.put(name, text);
            }
          });
    } catch (IOException | NotJson e) {
      words.clear(); // likes are no evidence: the usual ones serve, and the next change mends it
    }
  }

  /** The word under a name. */
  public synchronized String get(Name name) {
    return words.getOrDefault(name.word, name.usual);
  }

  /**
   * Changes one and keeps it.
   *
   * @throws Problem.Outside if the disk does not take it; it still counts until the window closes
   */
  public synchronized void put(Name name, String value) {
    words.put(name.word, value);
    try {
      String text = Json.write(new LinkedHashMap<>(words)) + '\n';
      new RealDisk().replace(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new Problem.Outside(e, DeskSays.NOT_KEPT, Elsewhere.words(e));
    }
  }
}
