package org.siltbench.balance.capture;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Reading;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.link.LinkSpec;

class CaptureTest {

  private static final OffsetDateTime BEGAN = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final Duration SECOND = Duration.ofSeconds(1);

  @TempDir Path folder;

  private Path record(long limit, String... chunks) throws IOException {
    try (Recorder recorder = new Recorder(folder, "tcp:h:1?unit=g", BEGAN, 1_000, limit)) {
      long nanos = 1_000;
      for (String chunk : chunks) {
        nanos += 250_000_000;
        recorder.accept(chunk.getBytes(ISO_8859_1), chunk.length(), nanos);
      }
      return recorder.finish();
    }
  }

  @Test
  void whatWasRecordedIsReadBackByteForByteWithItsTimes() throws Exception {
    Capture capture = Capture.read(record(10_000, "0.1 g\r\n", "\u0000\u00ff'\\\t", "0."));
    assertEquals("tcp:h:1?unit=g", capture.from());
    assertEquals(BEGAN, capture.began());
    assertTrue(capture.whole());
    assertEquals(
        List.of(
            new Chunk(250_000, "0.1 g\r\n"),
            new Chunk(500_000, "\u0000\u00ff'\\\t"),
            new Chunk(750_000, "0.")),
        capture.chunks());
  }

  @Test
  void theFileIsNamedByItsHash() throws Exception {
    Path file = record(10_000, "0.1 g\r\n");
    byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
    assertEquals(
        HexFormat.of().formatHex(hash).substring(0, 16) + ".capture",
        file.getFileName().toString());
  }

  @Test
  void aRecordingStopsAtItsLimitAndSaysSo() throws Exception {
    String[] many = new String[1000];
    java.util.Arrays.fill(many, "0.12345 g\r\n");
    Path file = record(2_000, many);
    assertTrue(Files.size(file) <= 2_000);
    assertFalse(Capture.read(file).whole());
  }

  @Test
  void aReplayGivesTheReadingsAtTheirRecordedTimes() throws Exception {
    Path file = record(10_000, "half\r\n", "0.1 g\r\n0.2", " g\r\n");
    Balances balances = new Balances(new VirtualTime(Instant.EPOCH), folder);
    try (ReadingSource source = balances.open(LinkSpec.parse("replay:" + file))) {
      Reading first = ((SourceEvent.Read) source.next(SECOND)).reading();
      Reading second = ((SourceEvent.Read) source.next(SECOND)).reading();
      assertEquals(BEGAN.toInstant().plusMillis(500), first.at());
      assertEquals(BEGAN.toInstant().plusMillis(750), second.at());
      assertEquals("0.2", second.digits());
      assertTrue(source.next(SECOND) instanceof SourceEvent.Ended);
      assertTrue(source.next(SECOND) instanceof SourceEvent.Ended);
    }
  }

  @Test
  void aPlainTextFileIsReplayedFromItsFirstLineWhateverEndsItsLines() throws Exception {
    Path file = Files.writeString(folder.resolve("lines.txt"), "0.1 g\n0.2 g\r\n0.3 g");
    Balances balances = new Balances(new VirtualTime(Instant.EPOCH), folder);
    try (ReadingSource source = balances.open(LinkSpec.parse("replay:" + file))) {
      for (String digits : List.of("0.1", "0.2", "0.3")) {
        assertEquals(digits, ((SourceEvent.Read) source.next(SECOND)).reading().digits());
      }
      assertTrue(source.next(SECOND) instanceof SourceEvent.Ended);
    }
  }

  @Test
  void aDamagedCaptureSaysWhichLine() throws Exception {
    Path file = record(10_000, "a", "b");
    String text = Files.readString(file).replace("500000 'b'", "5x0000 'b'");
    Path bad = Files.writeString(folder.resolve("bad.capture"), text);
    IOException e = assertThrows(IOException.class, () -> Capture.read(bad));
    assertTrue(e.getMessage().contains("line 5"), e.getMessage());
  }
}
