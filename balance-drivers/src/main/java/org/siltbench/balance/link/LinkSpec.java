package org.siltbench.balance.link;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The text that names a balance and how to reach it: {@code serial:PATH?baud=9600&format=heron},
 * {@code tcp:HOST:PORT}, {@code replay:FILE}, {@code practice?seed=7}. Keys and values are
 * percent-encoded as in URLs.
 */
public sealed interface LinkSpec {

  /** What every kind of link may carry. */
  SpecOptions options();

  /** The same link with other options. */
  LinkSpec with(SpecOptions options);

  /** A serial port by path or system name. */
  record Serial(String port, LineSettings line, SpecOptions options) implements LinkSpec {
    @Override
    public Serial with(SpecOptions other) {
      return new Serial(port, line, other);
    }

    @Override
    public String toString() {
      return SpecText.print(this);
    }
  }

  /** A balance that types like a keyboard: whoever has the text input hands its lines in. */
  record Typed(SpecOptions options) implements LinkSpec {
    @Override
    public Typed with(SpecOptions other) {
      return new Typed(other);
    }

    @Override
    public String toString() {
      return SpecText.print(this);
    }
  }

  /** A TCP port; with line settings where the far end takes RFC 2217 port control. */
  record Tcp(String host, int port, @Nullable LineSettings rfc2217, SpecOptions options)
      implements LinkSpec {
    @Override
    public Tcp with(SpecOptions other) {
      return new Tcp(host, port, rfc2217, other);
    }

    @Override
    public String toString() {
      return SpecText.print(this);
    }
  }

  /** A capture file, or a plain text file of lines without times. */
  record Replay(Path file, SpecOptions options) implements LinkSpec {
    @Override
    public Replay with(SpecOptions other) {
      return new Replay(file, other);
    }

    @Override
    public String toString() {
      return SpecText.print(this);
    }
  }

  /** The simulated balance. */
  record Practice(long seed, SpecOptions options) implements LinkSpec {
    @Override
    public Practice with(SpecOptions other) {
      return new Practice(seed, other);
    }

    @Override
    public String toString() {
      return SpecText.print(this);
    }
  }

  /**
   * Reads a link text.
   *
   * @throws IllegalArgumentException with a message for the person if it cannot be read
   */
  static LinkSpec parse(String text) {
    return SpecText.parse(text);
  }
}
