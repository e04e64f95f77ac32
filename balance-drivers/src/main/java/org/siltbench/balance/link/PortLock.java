package org.siltbench.balance.link;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.Timebase;
import org.siltbench.calc.reason.Reason;

/**
 * Makes one program the owner of a serial port, by its real path; the file behind it names the
 * holder. The lock goes with the process, however that ends.
 */
final class PortLock implements AutoCloseable {

  private static final int LONGEST_NAME = 300;

  private final FileChannel channel;

  private PortLock(FileChannel channel) {
    this.channel = channel;
  }

  static PortLock take(String realPath, Timebase time) throws IOException {
    Path file = folder().resolve(realPath.replaceAll("[^A-Za-z0-9.]", "_") + ".lock");
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      if (tryLock(channel) == null) {
        throw new BalanceException(
            BalanceSays.IN_USE.with(realPath, holder(channel)), BalanceSays.CLOSE_OTHER.with());
      }
      write(channel, "process " + ProcessHandle.current().pid() + " since " + time.instant());
      return new PortLock(channel);
    } catch (IOException e) {
      channel.close();
      throw e;
    }
  }

  private static Path folder() throws IOException {
    String user = System.getProperty("user.name", "user").replaceAll("[^A-Za-z0-9]", "_");
    Path tmp = Path.of(System.getProperty("java.io.tmpdir", "/tmp"));
    return Files.createDirectories(tmp.resolve("siltbench-ports-" + user));
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null; // held within this very process
    }
  }

  private static Reason holder(FileChannel channel) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(LONGEST_NAME);
    channel.read(bytes, 0);
    String text = UTF_8.decode(bytes.flip()).toString().strip();
    return text.isEmpty() ? BalanceSays.ANOTHER_PROGRAM.with() : Reason.plain(text);
  }

  private static void write(FileChannel channel, String text) throws IOException {
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(text.getBytes(UTF_8)), 0);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
