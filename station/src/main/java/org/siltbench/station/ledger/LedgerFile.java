package org.siltbench.station.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * One ledger file, read on from a known position and appended to. Calls come from one thread at a
 * time; calls that change the file are made under the lab's lock.
 */
public final class LedgerFile implements Closeable {

  private static final int CHUNK = 1 << 20;

  private final Disk disk;
  private final Path path;
  private final boolean mirror;
  private final Consumer<Words> notes;
  private Disk.File file;
  private Position position;
  private Position actStart;
  private ActPart part = ActPart.ALONE;
  private final End end;
  private boolean unsure;
  private boolean gap;

  /**
   * Opens the file at a position known before, or at its start.
   *
   * @param mirror a copy of another bench's ledger: what cannot be read is set aside, since it can
   *     be fetched again
   * @param pen tells whether another process wrote meanwhile
   */
  public LedgerFile(
      Disk disk, Path path, boolean mirror, Position known, Pen pen, Consumer<Words> notes)
      throws IOException {
    this.disk = disk;
    this.mirror = mirror;
    this.path = path;
    this.notes = notes;
    this.end = new End(pen);
    this.position = known;
    this.actStart = known;
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
    part = ActPart.ALONE;
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
   * Reads on, at most so many lines and then to the end of their act, and mends the end where a
   * power cut left it torn: a whole entry gets its newline, anything else is set aside into a file
   * beside, and with it the lines of the same act that are whole. If the disk fails meanwhile,
   * nothing counts as read.
   */
  public List<Line> readOn(int atMost) throws IOException {
    if (file.size() < position.end()) {
      block("lines that were known are missing at the end of " + path.getFileName());
      return List.of();
    }
    Position before = position;
    ActPart partBefore = part;
    boolean gapBefore = gap;
    try {
      return readAndMend(atMost);
    } catch (IOException e) {
      position = before;
      part = partBefore;
      gap = gapBefore;
      throw e;
    }
  }

  private List<Line> readAndMend(int atMost) throws IOException {
    List<Line> lines = new ArrayList<>();
    actStart = position;
    Pieces pieces = new Pieces(file, position.end());
    Pieces.@Nullable Piece piece = pieces.next();
    boolean more = true;
    while (piece != null && more) {
      more = take(piece, lines) && (lines.size() < atMost || inAct());
      boolean onward = piece.ended();
      if (more && position.end() < piece.end()) {
        pieces = new Pieces(file, position.end());
        onward = true;
      }
      piece = more && onward ? pieces.next() : null;
    }
    if (inAct() && more) {
      setAside(actStart.end());
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).end() > position.end()) {
      lines.remove(lines.size() - 1);
    }
    if (!mirror && !lines.isEmpty() && file.size() == position.end()) {
      makeSure(lines);
    }
    return lines;
  }

  private boolean inAct() {
    return !mirror && actStart.seq() != position.seq();
  }

  /**
   * Whoever wrote the newest act may have failed to force it; then the system shows it although it
   * may never reach the disk. Nothing is written after an act before that act is sure.
   */
  private void makeSure(List<Line> lines) throws IOException {
    end.beforeMending();
    Line newest = lines.get(lines.size() - 1);
    long from = lines.get(Math.max(0, lines.size() - newest.part().place())).at();
    for (long at = from; at < newest.end(); at += CHUNK) {
      file.writeAll(file.bytes(at, (int) Math.min(CHUNK, newest.end() - at)), at);
    }
    end.cut(file, position.end());
  }

  /** False if the rest was set aside. */
  private boolean take(Pieces.Piece piece, List<Line> lines) throws IOException {
    try {
      Line line = LineText.read(piece.entry(), piece.at());
      checkPlace(line);
      if (!piece.ended()) {
        end.beforeMending();
        file.truncate(line.at() + line.length());
        file.writeAll(new byte[] {'\n'}, line.at() + line.length());
        file.force();
      }
      position = position.after(line);
      actStart = mirror || gap || line.part().isLast() ? position : actStart;
      part = line.part();
      gap = false;
      lines.add(line);
      return true;
    } catch (BadLine e) {
      if (!mirror && mended(piece)) {
        return true;
      }
      if (!e.newer() && (mirror || Tail.torn(file, piece))) {
        setAside(mirror ? piece.at() : actStart.end());
        return false;
      }
      position = position.past(piece.end(), trouble(piece, e));
      actStart = position;
      gap = true;
      return true;
    }
  }

  /** Gives a line back the byte that a power cut took; it is then read anew. */
  private boolean mended(Pieces.Piece piece) throws IOException {
    LostByte lost = LostByte.ofNewestAct(file, piece);
    if (lost != null) {
      end.beforeMending();
      lost.mend(file);
    }
    return lost != null;
  }

  private String trouble(Pieces.Piece piece, BadLine e) {
    return "the line at byte %d of %s cannot be read: %s"
        .formatted(piece.at(), path.getFileName(), e.getMessage());
  }

  private void checkPlace(Line line) throws BadLine {
    EntryRef ref = line.entry().ref();
    if (!ref.bench().equals(position.bench())) {
      throw BadLine.damaged(LedgerSays.BAD_OTHER_BENCH, ref.bench());
    }
    boolean follows = ref.seq() == position.seq() + 1 && line.prev().equals(position.sum());
    boolean afterGap = gap && ref.seq() > position.seq();
    if (!follows && !afterGap) {
      throw BadLine.damaged(LedgerSays.BAD_NOT_FOLLOWING);
    }
    if (!mirror && !gap && !line.part().follows(part)) {
      throw BadLine.damaged(LedgerSays.BAD_ACT);
    }
  }

  private void setAside(long from) throws IOException {
    if (!mirror) {
      position = actStart;
      part = ActPart.ALONE;
    }
    Path aside = freeName(from);
    try (Disk.File copy = disk.open(aside)) {
      long size = file.size();
      for (long at = from; at < size; at += CHUNK) {
        copy.writeAll(file.bytes(at, (int) Math.min(CHUNK, size - at)), at - from);
      }
      copy.force();
    }
    end.beforeMending();
    end.cut(file, from);
    notes.accept(asideNote(aside));
  }

  private Words asideNote(Path aside) {
    return mirror
        ? Said.of(LedgerSays.NOTE_MIRROR_ASIDE, path.getFileName(), aside.getFileName())
        : Said.of(LedgerSays.NOTE_TORN_ASIDE, path.getFileName(), aside.getFileName());
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
   * Writes the entries of one act together and forces them. After a failure nothing may be written
   * until {@link #recover} has found the end again.
   */
  public List<Line> append(List<Entry> act) throws IOException {
    if (unsure) {
      throw new IOException("the end of the ledger is not known after a failed write");
    }
    List<Line> lines = new ArrayList<>(act.size());
    byte[] bytes = text(act, lines);
    unsure = true;
    end.beforeAct(file, position.end());
    file.writeAll(bytes, position.end());
    file.force();
    end.afterAct();
    unsure = false;
    for (Line line : lines) {
      position = position.after(line);
    }
    part = ActPart.ALONE;
    return lines;
  }

  private byte[] text(List<Entry> act, List<Line> lines) {
    if (act.size() > LineText.MAX_ACT) {
      throw tooMuch(act.size() + " entries");
    }
    byte[][] texts = new byte[act.size()][];
    String prev = position.sum();
    long at = position.end();
    for (int i = 0; i < texts.length; i++) {
      ActPart place = new ActPart(i + 1, texts.length);
      byte[] text = LineText.write(act.get(i), place, prev);
      Line line = new Line(act.get(i), at, text.length, prev, LineText.sumOf(text), place);
      if (text.length > LineText.MAX_BYTES) {
        throw tooMuch("an entry of " + text.length + " bytes");
      }
      texts[i] = text;
      lines.add(line);
      prev = line.sum();
      at = line.end();
    }
    return joined(texts, (int) (at - position.end()));
  }

  private static Problem.Refused tooMuch(String what) {
    return new Problem.Refused(LedgerSays.TOO_MUCH, what);
  }

  private static byte[] joined(byte[][] texts, int length) {
    byte[] bytes = new byte[length];
    int at = 0;
    for (byte[] text : texts) {
      System.arraycopy(text, 0, bytes, at, text.length);
      at += text.length;
      bytes[at++] = '\n';
    }
    return bytes;
  }

  /** Appends lines of another bench as they are; {@link #readOn} then reads and checks them. */
  public void appendVerbatim(byte[] lines) throws IOException {
    unsure = true;
    end.beforeAct(file, position.end());
    file.writeAll(lines, position.end());
    file.force();
    end.afterAct();
    unsure = false;
  }

  /** True after a failed write or force, until {@link #recover} has succeeded. */
  public boolean unsure() {
    return unsure;
  }

  /**
   * After a failed write or force: opens the file anew, takes away what was never acknowledged,
   * forces, and reads the last acknowledged line again. Where another process wrote meanwhile it
   * made the end sure before, and nothing is taken away: what stands there may be its own.
   */
  public void recover() throws IOException {
    file.close();
    file = disk.open(path);
    if (end.isUntouched()) {
      end.cut(file, position.end());
    }
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
