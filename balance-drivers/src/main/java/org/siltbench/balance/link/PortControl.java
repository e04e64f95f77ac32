package org.siltbench.balance.link;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Queue;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;
import org.siltbench.balance.Timebase;
import org.siltbench.calc.reason.Reason;

/**
 * A serial port behind a network box: sets its speed, bits, parity and stop bits by RFC 2217 and
 * hands through the data. Only the box is spoken to; nothing of this reaches the balance.
 */
final class PortControl implements Connection {

  /** COM-PORT-OPTION (RFC 2217). */
  static final int OPTION = 44;

  private static final int SERVER = 100;
  private static final int BINARY = 0;
  private static final int GO_AHEAD_OFF = 3;
  private static final long PATIENCE_NANOS = 3_000_000_000L;
  private static final long SLICE_NANOS = 200_000_000L;

  private enum Command {
    BAUD(1),
    BITS(2),
    PARITY(3),
    STOP(4);

    private final int number;

    Command(int number) {
      this.number = number;
    }
  }

  private final Connection raw;
  private final LineSettings wanted;
  private final Telnet telnet = new Telnet(new Commands());
  private final Set<Command> unconfirmed = EnumSet.allOf(Command.class);
  private final Queue<byte[]> replies = new ArrayDeque<>();
  private final byte[] early = new byte[4096];
  private int earlyCount;
  private @Nullable Reason refusal;

  private PortControl(Connection raw, LineSettings wanted) {
    this.raw = raw;
    this.wanted = wanted;
  }

  static PortControl open(Connection raw, LineSettings wanted, Timebase time) throws IOException {
    PortControl out = new PortControl(raw, wanted);
    raw.write(bytes(Telnet.IAC, Telnet.WILL, OPTION));
    raw.write(bytes(Telnet.IAC, Telnet.DO, BINARY, Telnet.IAC, Telnet.WILL, BINARY));
    raw.write(bytes(Telnet.IAC, Telnet.DO, GO_AHEAD_OFF));
    for (Command command : Command.values()) {
      raw.write(out.request(command));
    }
    out.awaitAnswers(time);
    return out;
  }

  /** The bytes that ask for one setting. */
  private byte[] request(Command command) {
    byte[] value =
        switch (command) {
          case BAUD -> ByteBuffer.allocate(4).putInt(wanted.baud()).array();
          case BITS -> bytes(wanted.bits());
          case PARITY -> bytes(wanted.parity().rfc2217());
          case STOP -> bytes(wanted.stop().rfc2217());
        };
    byte[] content = new byte[2 + value.length];
    content[0] = OPTION;
    content[1] = (byte) command.number;
    System.arraycopy(value, 0, content, 2, value.length);
    return Telnet.sub(content);
  }

  private static byte[] bytes(int... values) {
    byte[] out = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      out[i] = (byte) values[i];
    }
    return out;
  }

  private void awaitAnswers(Timebase time) throws IOException {
    byte[] chunk = new byte[512];
    long deadline = time.nanos() + PATIENCE_NANOS;
    while (!unconfirmed.isEmpty() && refusal == null && time.nanos() - deadline < 0) {
      int count = take(chunk, SLICE_NANOS);
      int room = Math.min(count, early.length - earlyCount);
      System.arraycopy(chunk, 0, early, earlyCount, room);
      earlyCount += room;
    }
    if (refusal != null || !unconfirmed.isEmpty()) {
      throw new BalanceException(
          Objects.requireNonNullElse(refusal, BalanceSays.NO_PORT_CONTROL.with()),
          BalanceSays.SET_ON_BOX.with());
    }
  }

  private int take(byte[] into, long atMostNanos) throws IOException {
    try {
      int count = telnet.strip(into, raw.read(into, atMostNanos));
      for (byte[] reply = replies.poll(); reply != null; reply = replies.poll()) {
        raw.write(reply);
      }
      return count;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LinkException(BalanceSays.INTERRUPTED.with(), e);
    }
  }

  @Override
  public int read(byte[] into, long atMostNanos) throws IOException {
    if (earlyCount > 0) {
      int count = Math.min(into.length, earlyCount);
      System.arraycopy(early, 0, into, 0, count);
      System.arraycopy(early, count, early, 0, earlyCount - count);
      earlyCount -= count;
      return count;
    }
    return take(into, atMostNanos);
  }

  @Override
  public void write(byte[] data) throws IOException {
    raw.write(Telnet.escape(data));
  }

  @Override
  public String where() {
    return raw.where();
  }

  @Override
  public void close() throws IOException {
    raw.close();
  }

  /** Hears what the far end says about options and settings. */
  private final class Commands implements Telnet.Listener {

    @Override
    public void option(int verb, int option) {
      if (option == OPTION && (verb == Telnet.DONT || verb == Telnet.WONT)) {
        refusal = BalanceSays.PORT_CONTROL_REFUSED.with();
      } else if (option != OPTION && option != BINARY && option != GO_AHEAD_OFF) {
        decline(verb, option);
      }
    }

    private void decline(int verb, int option) {
      if (verb == Telnet.DO) {
        replies.add(bytes(Telnet.IAC, Telnet.WONT, option));
      } else if (verb == Telnet.WILL) {
        replies.add(bytes(Telnet.IAC, Telnet.DONT, option));
      }
    }

    @Override
    public void sub(byte[] content) {
      if (content.length < 3 || content[0] != OPTION) {
        return;
      }
      for (Command command : Command.values()) {
        if ((content[1] & 0xFF) == command.number + SERVER) {
          confirmed(command, content);
        }
      }
    }

    private void confirmed(Command command, byte[] content) {
      long value = 0;
      for (int i = 2; i < content.length; i++) {
        value = (value << 8) | (content[i] & 0xFF);
      }
      unconfirmed.remove(command);
      if (value != wantedValue(command)) {
        refusal = BalanceSays.SET_INSTEAD.with(command, value);
      }
    }

    private long wantedValue(Command command) {
      return switch (command) {
        case BAUD -> wanted.baud();
        case BITS -> wanted.bits();
        case PARITY -> wanted.parity().rfc2217();
        case STOP -> wanted.stop().rfc2217();
      };
    }
  }
}
