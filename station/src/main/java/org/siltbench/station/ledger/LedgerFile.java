package org.siltbench.station.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One ledger file, read on from a known position and appended to. All calls come from one thread
 * that is never interrupted; calls that change the file are made under the lab's lock.
 */
public final class LedgerFile implements Closeable {

  private static final int CHUNK = 1 << 20;

  private final Disk disk;
  private final Path path;
  private final boolean mirror;
  private final Consumer<String> notes;
  private Disk.File file;
  private Position position;
  private boolean unsure;
  private boolean gap;

  /**
   * Opens the file at a position known before, or at its start.
   *
   * @param mirror a copy of another bench's ledger: what cannot be read is set aside, since it can
   *     be fetched again
   */
  public LedgerFile(Disk disk, Path path, boolean mirror, Position known, Consumer<String> notes)
      throws IOException {
    this.disk = disk;
    this.mirror = mirror;
    this.path = path;
    this.notes = notes;
    this.position = known;
    this.file = disk.open(path);
  }

  /** How far it was read. */
  public Position position() {
    return position;
  }

  /** True if the entry that ends at the known position is still there, byte for byte. */
  public boolean fitsPosition() throws IOException {
    if (position.seq() == 0) {
      return true;
    }
    int length = (int) (position.end() - position.lastAt());
    if (file.size() < position.end() || length < 2 || length > LineText.MAX_BYTES + 1) {
      return false;
    }
    byte[] bytes = file.bytes(position.lastAt(), length);
    try {
      Line line = LineText.read(Arrays.copyOf(bytes, length - 1), position.lastAt());
      return bytes[length - 1] == '\n' && line.sum().equals(position.sum());
    } catch (BadLine e) {
      return false;
    }
  }

  /** True if lines that were known are no longer in the file. */
  public boolean isCutOff() throws IOException {
    return file.size() < position.end();
  }

  /** Goes back to the start, to read everything again. */
  public void rewind() {
    position = Position.start(position.bench()).past(0, position.trouble());
    gap = false;
  }

  /** Marks what stops writing. */
  public void block(String why) {
    position = position.past(position.end(), why);
  }

  /** The bytes of one line. */
  public byte[] bytes(long at, int length) throws IOException {
    return file.bytes(at, length);
  }

  /** True if there may be something to read. */
  public boolean hasMore() throws IOException {
    return file.size() != position.end();
  }

  /**
   * Reads on, at most so many lines, and mends the end where a power cut left it torn: a whole
   * entry gets its newline, anything else is set aside into a file beside.
   */
  public List<Line> readOn(int atMost) throws IOException {
    List<Line> lines = new ArrayList<>();
    if (file.size() < position.end()) {
      block("lines that were known are missing at the end of " + path.getFileName());
      return lines;
    }
    Pieces pieces = new Pieces(file, position.end());
    Pieces.@Nullable Piece piece = pieces.next();
    while (piece != null) {
      Pieces.@Nullable Piece next = pieces.next();
      boolean whole = take(piece, next == null, lines);
      piece = whole && lines.size() < atMost ? next : null;
    }
    if (!mirror && !lines.isEmpty() && file.size() == position.end()) {
      makeSure(lines.get(lines.size() - 1));
    }
    return lines;
  }

  /**
   * Whoever wrote the newest line may have failed to force it; then the system shows it although it
   * may never reach the disk. Nothing is written after a line before that line is sure.
   */
  private void makeSure(Line newest) throws IOException {
    file.writeAll(file.bytes(newest.at(), newest.length() + 1), newest.at());
    file.force();
  }

  /** False if the rest was set aside. */
  private boolean take(Pieces.Piece piece, boolean last, List<Line> lines) throws IOException {
    try {
      Line line = LineText.read(piece.entry(), piece.at());
      checkPlace(line);
      if (!piece.ended()) {
        file.truncate(line.at() + line.length());
        file.writeAll(new byte[] {'\n'}, line.at() + line.length());
        file.force();
      }
      position = position.after(line);
      gap = false;
      lines.add(line);
      return true;
    } catch (BadLine e) {
      boolean torn = last && piece.torn();
      if (!e.newer() && (mirror || torn)) {
        setAside(piece.at());
        return false;
      }
      position = position.past(piece.end(), trouble(piece, e));
      gap = true;
      return true;
    }
  }

  private String trouble(Pieces.Piece piece, BadLine e) {
    return "the line at byte %d of %s cannot be read: %s"
        .formatted(piece.at(), path.getFileName(), e.getMessage());
  }

  private void checkPlace(Line line) throws BadLine {
    EntryRef ref = line.entry().ref();
    if (!ref.bench().equals(position.bench())) {
      throw BadLine.damaged("it belongs to bench " + ref.bench());
    }
    boolean follows = ref.seq() == position.seq() + 1 && line.prev().equals(position.sum());
    boolean afterGap = gap && ref.seq() > position.seq();
    if (!follows && !afterGap) {
      throw BadLine.damaged("it does not follow the line before");
    }
  }

  private void setAside(long from) throws IOException {
    Path aside = freeName(from);
    try (Disk.File copy = disk.open(aside)) {
      long size = file.size();
      for (long at = from; at < size; at += CHUNK) {
        copy.writeAll(file.bytes(at, (int) Math.min(CHUNK, size - at)), at - from);
      }
      copy.force();
    }
    file.truncate(from);
    file.force();
    notes.accept(asideNote(aside));
  }

  private String asideNote(Path aside) {
    return mirror
        ? "The copy %s of another bench's ledger was damaged from some line on. The rest is kept in %s and will be fetched again."
            .formatted(path.getFileName(), aside.getFileName())
        : "The last line of %s was cut short, as by a power cut. It was never confirmed as recorded. It is kept in %s; everything before it is whole."
            .formatted(path.getFileName(), aside.getFileName());
  }

  private Path freeName(long from) throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    List<String> taken = folder == null ? List.of() : disk.names(folder);
    String stem = path.getFileName() + ".torn-" + from;
    String name = stem;
    for (int n = 2; taken.contains(name); n++) {
      name = stem + "-" + n;
    }
    return path.resolveSibling(name);
  }

  /**
   * Writes one entry and forces it. After a failure nothing may be written until {@link #recover}
   * has found the end again.
   */
  public Line append(Entry entry) throws IOException {
    if (unsure) {
      throw new IOException("the end of the ledger is not known after a failed write");
    }
    byte[] text = LineText.write(entry, position.sum());
    byte[] bytes = Arrays.copyOf(text, text.length + 1);
    bytes[text.length] = '\n';
    unsure = true;
    file.writeAll(bytes, position.end());
    file.force();
    unsure = false;
    Line line = new Line(entry, position.end(), text.length, position.sum(), LineText.sumOf(text));
    position = position.after(line);
    return line;
  }

  /** Appends lines of another bench as they are; {@link #readOn} then reads and checks them. */
  public void appendVerbatim(byte[] lines) throws IOException {
    unsure = true;
    file.writeAll(lines, position.end());
    file.force();
    unsure = false;
  }

  /** True after a failed write or force, until {@link #recover} has succeeded. */
  public boolean unsure() {
    return unsure;
  }

  /**
   * After a failed write or force: opens the file anew, takes away what was never acknowledged,
   * forces, and reads the last acknowledged line again. The size is always changed, since a system
   * may have forgotten a change that it failed to force before.
   */
  public void recover() throws IOException {
    file.close();
    file = disk.open(path);
    if (file.size() == position.end()) {
      file.writeAll(new byte[1], position.end());
    }
    file.truncate(position.end());
    file.force();
    if (!fitsPosition()) {
      block("the last entry of " + path.getFileName() + " cannot be read again");
    }
    unsure = false;
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
