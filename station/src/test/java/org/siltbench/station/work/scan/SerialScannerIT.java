package org.siltbench.station.work.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.command.weigh.PtyFeed;

/** A scanner on a pseudo-terminal: its lines are scans, and a pulled cable comes back. */
@Timeout(60)
class SerialScannerIT {

  @TempDir Path folder;

  @Test
  void lines_are_scans_and_a_pulled_cable_is_told_and_comes_back() throws Exception {
    BlockingQueue<String> scans = new LinkedBlockingQueue<>();
    BlockingQueue<String> trouble = new LinkedBlockingQueue<>();
    Balances links = new Balances(Timebase.system(), folder);
    ExecutorService threads = Executors.newCachedThreadPool();
    try (PtyFeed wand = new PtyFeed(folder.resolve("wand"), 40, "K3DF0712R");
        SerialScanner scanner =
            new SerialScanner(
                () -> links.link(LinkSpec.parse(wand.spec())),
                scans::add,
                why -> trouble.add(why.english()))) {
      scanner.start(threads);
      assertEquals("", trouble.poll(20, TimeUnit.SECONDS));
      scans.poll(20, TimeUnit.SECONDS); // the first may be half a line
      assertEquals("K3DF0712R", scans.poll(20, TimeUnit.SECONDS));
      wand.pullOut();
      String why = trouble.poll(20, TimeUnit.SECONDS);
      assertEquals(false, why == null || why.isEmpty());
      wand.show("K3DF0713P");
      wand.plugIn();
      String scan = scans.poll(20, TimeUnit.SECONDS);
      while (scan != null && !scan.equals("K3DF0713P")) {
        scan = scans.poll(20, TimeUnit.SECONDS);
      }
      assertEquals("K3DF0713P", scan);
    } finally {
      threads.shutdownNow();
    }
  }
}
