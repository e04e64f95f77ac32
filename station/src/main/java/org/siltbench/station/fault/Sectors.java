package org.siltbench.station.fault;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/** One file: what the system shows, what is surely on the disk, and what is under way. */
final class Sectors {

  private static final int SECTOR = 512;

  /** A change of the file's bytes. */
  private interface Change {
    byte[] of(byte[] file);
  }

  private final List<Change> underWay = new ArrayList<>();
  private byte[] shown;
  private byte[] safe;

  Sectors() {
    this(new byte[0]);
  }

  Sectors(byte[] content) {
    shown = content.clone();
    safe = content.clone();
  }

  long size() {
    return shown.length;
  }

  byte[] durable() {
    return safe.clone();
  }

  int read(ByteBuffer into, long at) {
    if (at >= shown.length) {
      return -1;
    }
    int length = (int) Math.min(into.remaining(), shown.length - at);
    into.put(shown, (int) at, length);
    return length;
  }

  void write(byte[] bytes, long at) {
    change(new Written(bytes, (int) at));
  }

  void truncate(long size) {
    if (size < shown.length) {
      change(new Cut((int) size));
    }
  }

  private void change(Change change) {
    shown = change.of(shown);
    underWay.add(change);
  }

  void force() {
    for (Change change : underWay) {
      safe = change.of(safe);
    }
    underWay.clear();
  }

  /** The system forgets what it could not write, and goes on showing it. */
  void failForce(RandomGenerator random) {
    safe = reached(random);
    underWay.clear();
  }

  void losePower(RandomGenerator random) {
    safe = reached(random);
    shown = safe.clone();
    underWay.clear();
  }

  /** Either the first changes in order, the last of them in part, or any sectors at any stage. */
  private byte[] reached(RandomGenerator random) {
    List<byte[]> stages = new ArrayList<>(List.of(safe));
    for (Change change : underWay) {
      stages.add(change.of(stages.get(stages.size() - 1)));
    }
    int last = random.nextInt(stages.size());
    return random.nextBoolean()
        ? inOrder(stages, last, random)
        : bySector(stages, stages.get(last).length, random);
  }

  private byte[] inOrder(List<byte[]> stages, int last, RandomGenerator random) {
    boolean inPart = last < underWay.size() && underWay.get(last) instanceof Written;
    return inPart
        ? ((Written) underWay.get(last)).part(stages.get(last), random)
        : stages.get(last);
  }

  private static byte[] bySector(List<byte[]> stages, int size, RandomGenerator random) {
    byte[] file = new byte[size];
    for (int from = 0; from < size; from += SECTOR) {
      byte[] stage = stages.get(random.nextInt(stages.size()));
      int to = Math.min(Math.min(from + SECTOR, size), stage.length);
      if (to > from) {
        System.arraycopy(stage, from, file, from, to - from);
      }
    }
    return file;
  }

  private record Cut(int size) implements Change {
    @Override
    public byte[] of(byte[] file) {
      return size < file.length ? Arrays.copyOf(file, size) : file;
    }
  }

  private static final class Written implements Change {
    private final byte[] bytes;
    private final int at;

    Written(byte[] bytes, int at) {
      this.bytes = bytes;
      this.at = at;
    }

    @Override
    public byte[] of(byte[] file) {
      return first(bytes.length, file);
    }

    byte[] part(byte[] file, RandomGenerator random) {
      return first(random.nextInt(bytes.length + 1), file);
    }

    private byte[] first(int length, byte[] file) {
      byte[] changed = Arrays.copyOf(file, Math.max(file.length, length == 0 ? 0 : at + length));
      System.arraycopy(bytes, 0, changed, at, length);
      return changed;
    }
  }
}
