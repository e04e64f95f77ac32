package org.siltbench.station.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/** An entry as the bytes of one line, and back. The form is described in docs/ledger.md. */
public final class LineText {

  /** The form of a line that this version writes. */
  public static final int VERSION = 1;

  /** The longest line, in bytes. */
  public static final int MAX_BYTES = 4 << 20;

  /** The most lines of one act. */
  public static final int MAX_ACT = 100_000;

  /** What stands for the hash before the first line. */
  public static final String NO_HASH = "0".repeat(64);

  /** Far from the end of the numbers, so that a clock can always move on. */
  private static final long LAST_MILLIS = 1L << 52;

  /** To look one up takes longer than to hash a line. */
  private static final ThreadLocal<MessageDigest> SHA_256 =
      ThreadLocal.withInitial(LineText::digest);

  private static final byte[] SUM = ",\"sum\":\"".getBytes(StandardCharsets.US_ASCII);
  private static final int TAIL = SUM.length + 64 + 2;
  private static final Pattern BENCH = Pattern.compile("[0-9A-Z]{4}");
  private static final Pattern KIND = Pattern.compile("[a-z][a-z0-9.-]{0,39}");
  private static final List<String> NAMES =
      List.of("v", "bench", "seq", "at", "hlc", "by", "kind", "kv", "must", "data", "prev", "sum");

  private LineText() {}

  /** The line for an entry that is an act of its own, without its newline. */
  public static byte[] write(Entry entry, String prev) {
    return write(entry, ActPart.ALONE, prev);
  }

  /** The line for an entry, without its newline. */
  public static byte[] write(Entry entry, ActPart part, String prev) {
    StringBuilder text = new StringBuilder(1024);
    text.append("{\"v\":").append(entry.v()).append(",\"bench\":");
    Json.write(entry.ref().bench(), text);
    text.append(",\"seq\":").append(entry.ref().seq()).append(",\"at\":\"");
    WallTime.write(entry.at(), text);
    text.append("\",\"hlc\":[").append(entry.hlc().millis()).append(',');
    text.append(entry.hlc().counter()).append("],\"by\":");
    Json.write(entry.by(), text);
    text.append(",\"kind\":");
    Json.write(entry.kind(), text);
    text.append(",\"kv\":").append(entry.kv()).append(",\"must\":").append(entry.must());
    if (part.of() > 1) {
      text.append(",\"act\":[").append(part.place()).append(',').append(part.of()).append(']');
    }
    text.append(",\"data\":");
    Json.write(entry.data(), text);
    text.append(",\"prev\":\"").append(prev).append('"');
    return summed(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] summed(byte[] hashed) {
    byte[] line = Arrays.copyOf(hashed, hashed.length + TAIL);
    System.arraycopy(SUM, 0, line, hashed.length, SUM.length);
    byte[] hex = sha256(hashed, 0, hashed.length).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(hex, 0, line, hashed.length + SUM.length, hex.length);
    line[line.length - 2] = '"';
    line[line.length - 1] = '}';
    return line;
  }

  /** The hash in the last field of a line that {@link #write} made. */
  public static String sumOf(byte[] line) {
    return new String(line, line.length - 66, 64, StandardCharsets.US_ASCII);
  }

  /** Reads the entry of a line that is known to be good; what changed meanwhile is an error. */
  public static Entry entry(byte[] line, long at) throws IOException {
    try {
      return read(line, at).entry();
    } catch (BadLine e) {
      throw new IOException("the line at byte " + at + " cannot be read: " + e.getMessage(), e);
    }
  }

  /** What ties a line to the line before. */
  public record Link(String bench, long seq, Hlc hlc, String prev, String sum) {}

  /** Reads a line that comes from outside; the message of the error says what is wrong. */
  public static Link link(byte[] line) throws IOException {
    try {
      Line read = read(line, 0);
      EntryRef ref = read.entry().ref();
      return new Link(ref.bench(), ref.seq(), read.entry().hlc(), read.prev(), read.sum());
    } catch (BadLine e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  /** Reads one line without its newline, and checks its own hash. */
  static Line read(byte[] line, long at) throws BadLine {
    String sum = checkedSum(line);
    Map<String, @Nullable Object> outer = outer(line);
    Object version = outer.get("v");
    if (version instanceof Long v && v > VERSION) {
      throw BadLine.newer(v);
    }
    ActPart part = part(outer);
    if (!NAMES.equals(new ArrayList<>(outer.keySet()))) {
      throw BadLine.damaged(LedgerSays.BAD_FIELDS);
    }
    Entry entry = entry(outer);
    return new Line(entry, at, line.length, hash(text(outer, "prev")), sum, part);
  }

  /** Takes the field act out, which stands before data where an act has several lines. */
  private static ActPart part(Map<String, @Nullable Object> outer) throws BadLine {
    if (!outer.containsKey("act")) {
      return ActPart.ALONE;
    }
    boolean inPlace = new ArrayList<>(outer.keySet()).indexOf("act") == NAMES.indexOf("data");
    if (outer.remove("act") instanceof List<?> pair
        && inPlace
        && pair.size() == 2
        && pair.get(0) instanceof Long place
        && pair.get(1) instanceof Long of
        && of > 1
        && of <= MAX_ACT
        && place >= 1
        && place <= of) {
      return new ActPart(place.intValue(), of.intValue());
    }
    throw BadLine.damaged(LedgerSays.BAD_PLACE);
  }

  private static Map<String, @Nullable Object> outer(byte[] line) throws BadLine {
    try {
      return Json.object(line);
    } catch (NotJson e) {
      throw BadLine.damaged(LedgerSays.BAD_JSON, e);
    }
  }

  private static String checkedSum(byte[] line) throws BadLine {
    int hashed = line.length - TAIL;
    if (hashed < 1
        || line.length > MAX_BYTES
        || !Arrays.equals(line, hashed, hashed + SUM.length, SUM, 0, SUM.length)
        || line[line.length - 2] != '"'
        || line[line.length - 1] != '}') {
      throw BadLine.damaged(LedgerSays.BAD_END);
    }
    String sum = sumOf(line);
    if (!sum.equals(sha256(line, 0, hashed))) {
      throw BadLine.damaged(LedgerSays.BAD_HASH);
    }
    return sum;
  }

  private static Entry entry(Map<String, @Nullable Object> outer) throws BadLine {
    try {
      return new Entry(
          (int) number(outer, "v", 1, VERSION),
          new EntryRef(matching(outer, "bench", BENCH), number(outer, "seq", 1, Long.MAX_VALUE)),
          OffsetDateTime.parse(text(outer, "at")),
          hlc(outer.get("hlc")),
          text(outer, "by"),
          matching(outer, "kind", KIND),
          (int) number(outer, "kv", 1, 9999),
          flag(outer, "must"),
          data(outer.get("data")));
    } catch (DateTimeException e) {
      throw BadLine.damaged(LedgerSays.BAD_TIME, e);
    }
  }

  private static Hlc hlc(@Nullable Object value) throws BadLine {
    if (value instanceof List<?> pair
        && pair.size() == 2
        && pair.get(0) instanceof Long millis
        && pair.get(1) instanceof Long counter
        && millis >= 0
        && millis <= LAST_MILLIS
        && counter >= 0
        && counter <= Integer.MAX_VALUE) {
      return new Hlc(millis, counter.intValue());
    }
    throw BadLine.damaged(LedgerSays.BAD_CLOCK);
  }

  private static Map<String, @Nullable Object> data(@Nullable Object value) throws BadLine {
    if (!(value instanceof Map<?, ?> map)) {
      throw BadLine.damaged(LedgerSays.BAD_DATA);
    }
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    map.forEach((name, member) -> data.put((String) name, member));
    return data;
  }

  private static boolean flag(Map<String, @Nullable Object> outer, String name) throws BadLine {
    if (outer.get(name) instanceof Boolean flag) {
      return flag;
    }
    throw BadLine.damaged(LedgerSays.BAD_FLAG, name);
  }

  private static long number(Map<String, @Nullable Object> outer, String name, long min, long max)
      throws BadLine {
    if (outer.get(name) instanceof Long number && number >= min && number <= max) {
      return number;
    }
    throw BadLine.damaged(LedgerSays.BAD_NUMBER, name, min);
  }

  private static String text(Map<String, @Nullable Object> outer, String name) throws BadLine {
    if (outer.get(name) instanceof String text) {
      return text;
    }
    throw BadLine.damaged(LedgerSays.BAD_TEXT, name);
  }

  private static String matching(Map<String, @Nullable Object> outer, String name, Pattern form)
      throws BadLine {
    String text = text(outer, name);
    if (form.matcher(text).matches()) {
      return text;
    }
    throw BadLine.damaged(LedgerSays.BAD_FORM, name);
  }

  private static String hash(String text) throws BadLine {
    if (text.length() == 64) {
      return text;
    }
    throw BadLine.damaged(LedgerSays.BAD_PREV);
  }

  private static String sha256(byte[] bytes, int from, int length) {
    MessageDigest digest = SHA_256.get();
    digest.update(bytes, from, length);
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
