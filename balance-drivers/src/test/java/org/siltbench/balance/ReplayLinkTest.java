package org.siltbench.balance;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;

class ReplayLinkTest extends SimulatedLinkContract {

  @TempDir Path folder;

  @Override
  Link link() throws Exception {
    Path file = Files.writeString(folder.resolve("lines.txt"), "  0.12345 g\n".repeat(10));
    Balances balances = new Balances(new VirtualTime(Instant.EPOCH), folder);
    return balances.link(LinkSpec.parse("replay:" + file));
  }
}
