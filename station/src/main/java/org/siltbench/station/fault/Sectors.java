package org.siltbench.station.fault;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/** One file: what the system shows, what is surely on the disk, and what is under way. */
final class Sectors {

  private static final int SECTOR = 512;

  /** A change of the file's bytes that may reach the disk in part. */
  private interface Change {
    byte[] whole(byte[] file);

    byte[] part(byte[] file, RandomGenerator random);
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
    shown = change.whole(shown);
    underWay.add(change);
  }

  void force() {
    for (Change change : underWay) {
      safe = change.whole(safe);
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

  /** Either the first changes in order, the last of them in part, or any of them in parts. */
  private byte[] reached(RandomGenerator random) {
    byte[] file = safe;
    boolean inOrder = random.nextBoolean();
    int whole = random.nextInt(underWay.size() + 1);
    for (int i = 0; i < underWay.size(); i++) {
      Change change = underWay.get(i);
      if (inOrder && i < whole) {
        file = change.whole(file);
      } else if (!inOrder || i == whole) {
        file = change.part(file, random);
      }
    }
    return file;
  }

  private record Cut(int size) implements Change {
    @Override
    public byte[] whole(byte[] file) {
      return size < file.length ? Arrays.copyOf(file, size) : file;
    }

    @Override
    public byte[] part(byte[] file, RandomGenerator random) {
      return random.nextBoolean() ? whole(file) : file;
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
    public byte[] whole(byte[] file) {
      return put(file, 0, bytes.length);
    }

    @Override
    public byte[] part(byte[] file, RandomGenerator random) {
      if (random.nextBoolean()) {
        return put(file, 0, random.nextInt(bytes.length + 1));
      }
      byte[] partly = random.nextBoolean() ? grown(file, at + bytes.length) : file;
      for (int from = 0; from < bytes.length; from = nextSector(from)) {
        if (random.nextBoolean()) {
          partly = put(partly, from, Math.min(nextSector(from), bytes.length));
        }
      }
      return partly;
    }

    private int nextSector(int from) {
      return (at + from) / SECTOR * SECTOR + SECTOR - at;
    }

    private byte[] put(byte[] file, int from, int to) {
      if (from == to) {
        return file;
      }
      byte[] changed = grown(file, at + to);
      if (changed == file) {
        changed = file.clone();
      }
      System.arraycopy(bytes, from, changed, at + from, to - from);
      return changed;
    }

    private static byte[] grown(byte[] file, int size) {
      return size > file.length ? Arrays.copyOf(file, size) : file;
    }
  }
}
