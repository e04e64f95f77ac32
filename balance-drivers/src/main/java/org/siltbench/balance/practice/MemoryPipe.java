package org.siltbench.balance.practice;

/** A pipe without any device. */
final class MemoryPipe implements Pipe {

  private byte[] held = new byte[0];
  private int taken;

  @Override
  public void send(byte[] line) {
    held = line.clone();
    taken = 0;
  }

  @Override
  public int receive(byte[] into) {
    int count = Math.min(into.length, held.length - taken);
    System.arraycopy(held, taken, into, 0, count);
    taken += count;
    return count;
  }

  @Override
  public String where() {
    return "practice";
  }

  @Override
  public void close() {
    taken = held.length;
  }
}
