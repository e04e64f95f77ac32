package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;

/** A lab folder that cannot be used as it is: a clear message, the right status, nothing lost. */
class BadLabIT {

  @TempDir Path folder;

  private static final String[] BATCH = {
    "batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "3"
  };

  @Test
  void a_folder_that_cannot_be_written_ends_with_3() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "not a folder");
    CommandLab lab = new CommandLab(file.resolve("lab"));
    assertEquals(3, lab.run(BATCH), lab::err);
    assertTrue(lab.err().contains(lab.folder().toString()), lab::err);
  }

  @Test
  void reading_a_lab_that_is_not_there_ends_with_2_and_makes_none() {
    CommandLab lab = new CommandLab(folder.resolve("none"));
    assertEquals(2, lab.run("batch", "list"), lab::err);
    assertTrue(Files.notExists(lab.folder()));
  }

  @Test
  void a_ledger_of_a_newer_version_is_not_written_to() throws Exception {
    CommandLab lab = new CommandLab(folder.resolve("lab"));
    lab.ok(BATCH);
    Path ledger = ledger(lab.folder());
    String written = Files.readString(ledger);
    Files.writeString(ledger, newer(written));
    String before = Files.readString(ledger);
    int status = lab.run("room", "--temperature", "20");
    assertEquals(3, status, lab::err);
    assertTrue(lab.err().contains("levitated"), lab::err);
    assertEquals(before, Files.readString(ledger));
    lab.ok("batch", "list");
  }

  /** The ledger with one more entry, of a kind that only a later version knows. */
  private static String newer(String ledger) throws Exception {
    String last = ledger.stripTrailing();
    last = last.substring(last.lastIndexOf('\n') + 1);
    String body =
        last.substring(0, last.indexOf(",\"sum\":")).replaceFirst(",\"act\":\\[\\d+,\\d+]", "");
    int seq = Integer.parseInt(body.replaceFirst(".*?\"seq\":(\\d+).*", "$1"));
    String next =
        body.replace("\"seq\":" + seq + ",", "\"seq\":" + (seq + 1) + ",")
            .replaceFirst("\"kind\":\"[^\"]*\"", "\"kind\":\"levitated\"")
            .replaceFirst(
                "\"prev\":\"[^\"]*\"",
                "\"prev\":\"" + last.substring(last.length() - 66, last.length() - 2) + "\"");
    return ledger + next + ",\"sum\":\"" + sha(next) + "\"}\n";
  }

  private static String sha(String text) throws Exception {
    return HexFormat.of()
        .formatHex(
            MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static Path ledger(Path lab) throws IOException {
    try (Stream<Path> files = Files.list(lab.resolve("ledger"))) {
      return files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
    }
  }

  @Test
  void a_full_disk_stops_new_work_with_3_and_keeps_the_old() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(system("mount", "-t", "tmpfs", "-o", "size=40m", "tmpfs", disk.toString()));
    try {
      CommandLab lab = new CommandLab(disk.resolve("lab"));
      lab.ok("lab", "new", "--practice").ok(BATCH);
      lab.ok("preweigh", "--batch", "B", "--balance", "practice", "--count", "1");
      Files.write(disk.resolve("holiday-films"), new byte[28 << 20]);
      assertEquals(3, lab.run("preweigh", "--batch", "B", "--balance", "practice"), lab::err);
      assertTrue(lab.err().toLowerCase(java.util.Locale.ROOT).contains("disk"), lab::err);
      Files.delete(disk.resolve("holiday-films"));
      lab.ok("preweigh", "--batch", "B", "--balance", "practice");
      assertTrue(VerifyLab.of(lab.folder(), java.util.List.of()).ok());
    } finally {
      system("umount", disk.toString());
    }
  }

  private static boolean system(String... words) throws IOException, InterruptedException {
    try {
      return new ProcessBuilder(words).redirectErrorStream(true).start().waitFor() == 0;
    } catch (IOException notHere) {
      return false;
    }
  }
}
