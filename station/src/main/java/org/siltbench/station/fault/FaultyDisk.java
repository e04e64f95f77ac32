package org.siltbench.station.fault;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.siltbench.station.ledger.Disk;

/**
 * A disk in memory that writes short, runs full, fails to force, and loses power. After a power cut
 * only forced bytes are sure; of the others any prefix, or any sectors, may have reached the disk.
 * After a failed force the system shows the bytes as if they were written, although they may never
 * reach the disk: so real systems do.
 */
public final class FaultyDisk implements Disk {

  /** How often what goes wrong, in one of so many calls; 0 for never. */
  public record Rates(int shortWrite, int full, int force, int cut) {}

  private final RandomGenerator random;
  private final Map<Path, Sectors> files = new TreeMap<>();
  private Rates rates = new Rates(0, 0, 0, 0);
  private boolean dark;

  /** A disk without files and, at first, without faults. */
  public FaultyDisk(RandomGenerator random) {
    this.random = random;
  }

  /** Sets the rates of faults from now on. */
  public void rates(Rates wanted) {
    rates = wanted;
  }

  /** After a power cut: only what reached the disk is there; open files are gone. */
  public void restart() {
    dark = false;
    files.values().forEach(file -> file.losePower(random));
  }

  /** The bytes that are surely on the disk. */
  public byte[] durable(Path path) {
    Sectors file = files.get(path);
    return file == null ? new byte[0] : file.durable();
  }

  private boolean happens(int oneIn) {
    return oneIn > 0 && random.nextInt(oneIn) == 0;
  }

  private void tick() {
    if (dark || happens(rates.cut())) {
      dark = true;
      throw new PowerCut();
    }
  }

  @Override
  public File open(Path path) {
    tick();
    return new Handle(files.computeIfAbsent(path, made -> new Sectors()));
  }

  @Override
  public File read(Path path) throws IOException {
    Sectors file = files.get(path);
    if (file == null) {
      throw new FileNotFoundException(path.toString());
    }
    return new Handle(file);
  }

  @Override
  public List<String> names(Path folder) {
    return files.keySet().stream()
        .filter(path -> folder.equals(path.getParent()))
        .map(path -> path.getFileName().toString())
        .toList();
  }

  @Override
  public void makeFolder(Path folder) {}

  @Override
  public void replace(Path path, byte[] content) {
    tick();
    files.put(path, new Sectors(content));
  }

  @Override
  public long usableSpace(Path folder) {
    return 1L << 40;
  }

  private final class Handle implements File {
    private final Sectors sectors;

    Handle(Sectors sectors) {
      this.sectors = sectors;
    }

    @Override
    public long size() {
      return sectors.size();
    }

    @Override
    public int read(ByteBuffer into, long at) {
      return sectors.read(into, at);
    }

    @Override
    public int write(ByteBuffer from, long at) throws IOException {
      int wanted = from.remaining();
      if (happens(rates.full())) {
        put(from, at, random.nextInt(wanted + 1));
        throw new IOException("No space left on device");
      }
      int taken = happens(rates.shortWrite()) ? 1 + random.nextInt(wanted) : wanted;
      put(from, at, taken);
      tick();
      return taken;
    }

    private void put(ByteBuffer from, long at, int length) {
      byte[] bytes = new byte[length];
      from.get(bytes);
      sectors.write(bytes, at);
    }

    @Override
    public void force() throws IOException {
      tick();
      if (happens(rates.force())) {
        sectors.failForce(random);
        throw new IOException("Input/output error");
      }
      sectors.force();
      tick();
    }

    @Override
    public void truncate(long size) {
      tick();
      sectors.truncate(size);
    }

    /** Whoever uses this disk is alone in it. */
    @Override
    public Lock tryLock(long at) {
      return () -> {};
    }

    @Override
    public void close() {}
  }
}
