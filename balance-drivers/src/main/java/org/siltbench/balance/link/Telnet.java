package org.siltbench.balance.link;

import java.io.ByteArrayOutputStream;

/**
 * Takes Telnet commands out of a stream of bytes (RFC 854, RFC 855). Pure: bytes in, data and
 * commands out.
 */
final class Telnet {

  static final int IAC = 255;
  static final int DONT = 254;
  static final int DO = 253;
  static final int WONT = 252;
  static final int WILL = 251;
  static final int SB = 250;
  static final int SE = 240;

  private static final int LONGEST_SUB = 256;

  /** Hears the commands found between the data. */
  interface Listener {
    /** WILL, WONT, DO or DONT of an option. */
    void option(int verb, int option);

    /** A whole subnegotiation, option first, doubled FF undone. */
    void sub(byte[] content);
  }

  private enum State {
    DATA,
    IAC_SEEN,
    VERB,
    SUB,
    SUB_IAC
  }

  private final Listener listener;
  private final ByteArrayOutputStream sub = new ByteArrayOutputStream();
  private State state = State.DATA;
  private int verb;

  Telnet(Listener listener) {
    this.listener = listener;
  }

  /**
   * Strips commands from the front {@code count} bytes in place; returns how many data bytes stay.
   */
  int strip(byte[] bytes, int count) {
    int kept = 0;
    for (int i = 0; i < count; i++) {
      int b = bytes[i] & 0xFF;
      if (isData(b)) {
        bytes[kept++] = (byte) b;
      }
    }
    return kept;
  }

  private boolean isData(int b) {
    switch (state) {
      case DATA -> {
        state = b == IAC ? State.IAC_SEEN : State.DATA;
        return b != IAC;
      }
      case IAC_SEEN -> {
        return afterIac(b);
      }
      case VERB -> {
        state = State.DATA;
        listener.option(verb, b);
      }
      case SUB -> inSub(b);
      case SUB_IAC -> afterSubIac(b);
    }
    return false;
  }

  private boolean afterIac(int b) {
    if (b >= WILL && b <= DONT) {
      verb = b;
      state = State.VERB;
    } else if (b == SB) {
      sub.reset();
      state = State.SUB;
    } else {
      state = State.DATA;
    }
    return b == IAC;
  }

  private void inSub(int b) {
    if (b == IAC) {
      state = State.SUB_IAC;
    } else if (sub.size() < LONGEST_SUB) {
      sub.write(b);
    }
  }

  private void afterSubIac(int b) {
    if (b == IAC) {
      state = State.SUB;
      if (sub.size() < LONGEST_SUB) {
        sub.write(IAC);
      }
      return;
    }
    state = State.DATA;
    if (b == SE) {
      listener.sub(sub.toByteArray());
    }
  }

  /** Data made ready to send: every FF doubled. */
  static byte[] escape(byte[] data) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(data.length + 4);
    for (byte b : data) {
      out.write(b);
      if ((b & 0xFF) == IAC) {
        out.write(b);
      }
    }
    return out.toByteArray();
  }

  /** A subnegotiation made ready to send: framed, every FF inside doubled. */
  static byte[] sub(byte... content) {
    byte[] inside = escape(content);
    byte[] out = new byte[inside.length + 4];
    out[0] = (byte) IAC;
    out[1] = (byte) SB;
    System.arraycopy(inside, 0, out, 2, inside.length);
    out[out.length - 2] = (byte) IAC;
    out[out.length - 1] = (byte) SE;
    return out;
  }
}
