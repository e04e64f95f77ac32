package org.siltbench.balance.capture;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import org.siltbench.balance.format.Quoted;

/**
 * Writes a stream of bytes with arrival times to a file that ends up named by its hash. Stops
 * taking bytes at its size limit and says so in the file.
 */
public final class Recorder implements AutoCloseable {

  private static final int HASH_DIGITS = 16;

  private final Path folder;
  private final Path open;
  private final MessageDigest hash = sha256();
  private final OutputStream out;
  private final long startNanos;
  private long left;

  /**
   * Begins a recording.
   *
   * @param folder where the file goes; made if it is not there
   * @param from the link text
   * @param began the time now
   * @param nowNanos the same moment on the link's monotonic clock
   * @param limit the most bytes the file may have
   */
  public Recorder(Path folder, String from, OffsetDateTime began, long nowNanos, long limit)
      throws IOException {
    this.folder = Files.createDirectories(folder);
    this.open = Files.createTempFile(folder, "recording-", ".part");
    this.out = new BufferedOutputStream(new DigestOutputStream(Files.newOutputStream(open), hash));
    this.startNanos = nowNanos;
    this.left = limit;
    put(Capture.FIRST_LINE + "\nfrom: " + Quoted.quote(from) + "\nbegan: " + began + "\n");
  }

  /** Takes bytes that arrived at the given moment of the link's clock. */
  public void accept(byte[] bytes, int count, long nanos) throws IOException {
    if (left <= 0) {
      return;
    }
    String text = Quoted.quote(new String(bytes, 0, count, ISO_8859_1));
    String line = Math.max(0, nanos - startNanos) / 1000 + " " + text + "\n";
    if (line.length() + Capture.CUT.length() + 1 > left) {
      put(Capture.CUT + "\n");
      left = 0;
    } else {
      put(line);
    }
  }

  private void put(String text) throws IOException {
    out.write(text.getBytes(ISO_8859_1));
    left -= text.length();
  }

  /** Ends the recording and gives it its name. */
  public Path finish() throws IOException {
    out.close();
    String name = HexFormat.of().formatHex(hash.digest()).substring(0, HASH_DIGITS) + ".capture";
    return Files.move(open, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
  }

  /** Gives an unfinished recording up. */
  @Override
  public void close() throws IOException {
    out.close();
    Files.deleteIfExists(open);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
