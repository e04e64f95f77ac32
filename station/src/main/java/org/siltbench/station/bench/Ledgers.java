package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.LedgerFile;
import org.siltbench.station.ledger.LineText;
import org.siltbench.station.ledger.Pen;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.register.LineSource;
import org.siltbench.station.said.Words;

/** The ledger of this bench and the copies of others, side by side in one folder. */
final class Ledgers implements LineSource, AutoCloseable {

  private static final Pattern NAME = Pattern.compile("([0-9A-Z]{4})\\.jsonl");

  private final Path folder;
  private final String code;
  private final Disk disk;
  private final Pen pen;
  private final Consumer<Words> notes;
  private final Map<String, LedgerFile> files = new TreeMap<>();

  Ledgers(Path folder, String code, Disk disk, Pen pen, Consumer<Words> notes) {
    this.folder = folder;
    this.code = code;
    this.disk = disk;
    this.pen = pen;
    this.notes = notes;
  }

  /** The bench whose ledger has this file name, or empty. */
  static String benchOf(String name) {
    var matched = NAME.matcher(name);
    return matched.matches() ? matched.group(1) : "";
  }

  static Path file(Path folder, String bench) {
    return folder.resolve(bench + ".jsonl");
  }

  LedgerFile own() {
    return get(code);
  }

  LedgerFile get(String bench) {
    LedgerFile file = files.get(bench);
    if (file == null) {
      throw new IllegalArgumentException("no ledger of bench " + bench);
    }
    return file;
  }

  Collection<LedgerFile> all() {
    return files.values();
  }

  /** True if there is something in a file that was not read. */
  boolean haveMore() throws IOException {
    for (LedgerFile file : files.values()) {
      if (file.hasMore()) {
        return true;
      }
    }
    return false;
  }

  /** Opens the files that stand in the folder and are not open yet. */
  void discover(Map<String, Position> known) throws IOException {
    for (String name : disk.names(folder)) {
      String bench = benchOf(name);
      if (!bench.isEmpty() && !files.containsKey(bench)) {
        open(bench, known);
      }
    }
    if (!files.containsKey(code)) {
      open(code, known);
    }
  }

  private void open(String bench, Map<String, Position> known) throws IOException {
    Position position = known.getOrDefault(bench, Position.start(bench));
    Path path = file(folder, bench);
    files.put(bench, new LedgerFile(disk, path, !bench.equals(code), position, pen, notes));
  }

  /** The copy of another bench's ledger, made empty where there is none. */
  LedgerFile mirror(String bench) throws IOException {
    if (!files.containsKey(bench)) {
      open(bench, Map.of());
    }
    return get(bench);
  }

  /** True if every file still holds what is known of it. */
  boolean fit(Collection<String> known) throws IOException {
    boolean fit = files.keySet().containsAll(known);
    for (LedgerFile file : files.values()) {
      if (!file.fitsPosition()) {
        fit = false;
        if (file == own() && file.isCutOff()) {
          file.block("Lines that this bench had recorded are missing at the end of its ledger.");
        }
      }
    }
    return fit;
  }

  @Override
  public Entry entry(String bench, long at, int length) throws IOException {
    return LineText.entry(get(bench).bytes(at, length), at);
  }

  @Override
  public String text(String bench, long at, int length) throws IOException {
    return new String(get(bench).bytes(at, length), StandardCharsets.UTF_8);
  }

  @Override
  public void close() throws IOException {
    for (LedgerFile file : new ArrayList<>(files.values())) {
      file.close();
    }
  }
}
