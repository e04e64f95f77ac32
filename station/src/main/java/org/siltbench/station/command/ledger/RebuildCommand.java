package org.siltbench.station.command.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.command.LongWork;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import picocli.CommandLine.Option;

/** {@code rebuild}. */
final class RebuildCommand implements Task {

  @Option(
      names = "--compare",
      description = "also compare the register before and after, byte for byte; takes longer")
  private boolean compare;

  @Override
  public int run(Session session) {
    OpenLab lab = Opened.lab(session);
    LongWork work = new LongWork(session);
    String before = compare ? hash(lab, work) : "";
    long entries = lab.rebuild(work::at);
    String after = hash(lab, work);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("entries", entries);
    document.put("register", after);
    if (compare) {
      document.put("same", before.equals(after));
    }
    session.document(document);
    session.fact("The register was made again from " + entries + " entries.");
    session.fact("its canonical export has SHA-256 " + after);
    if (compare && !before.equals(after)) {
      session.message("The register was not what the ledger says. It is now.");
    }
    return 0;
  }

  private static String hash(OpenLab lab, LongWork work) {
    Digest digest = new Digest(work);
    lab.export(digest);
    return digest.hex();
  }

  /** Takes text and keeps only its hash. */
  private static final class Digest implements Appendable {
    private final MessageDigest digest;

    private final LongWork work;
    private long rows;

    Digest(LongWork work) {
      this.work = work;
      try {
        digest = MessageDigest.getInstance("SHA-256");
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException("every Java has SHA-256", e);
      }
    }

    @Override
    public Appendable append(CharSequence text) {
      digest.update(text.toString().getBytes(StandardCharsets.UTF_8));
      return this;
    }

    @Override
    public Appendable append(CharSequence text, int start, int end) {
      return append(text.subSequence(start, end));
    }

    @Override
    public Appendable append(char c) {
      if (c == '\n') {
        rows++;
        work.counted("rows of the register hashed", rows);
      }
      return append(String.valueOf(c));
    }

    String hex() {
      return HexFormat.of().formatHex(digest.digest());
    }
  }
}
