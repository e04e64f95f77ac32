package org.siltbench.balance.link;

import java.util.List;
import org.siltbench.calc.reason.Unfit;

/**
 * How bits are laid on a serial line.
 *
 * @param baud bits a second, 50 to 4,000,000
 * @param bits data bits, 5 to 8
 * @param parity the parity bit
 * @param stop stop bits
 */
public record LineSettings(int baud, int bits, Parity parity, Stop stop) {

  /** 9600 baud, 8 bits, no parity, 1 stop bit. */
  public static final LineSettings DEFAULT = new LineSettings(9600, 8, Parity.NONE, Stop.ONE);

  private static final int SLOWEST = 50;
  private static final int FASTEST = 4_000_000;

  /** Refuses settings no port has. */
  public LineSettings {
    if (baud < SLOWEST || baud > FASTEST) {
      throw new Unfit(SpecSays.BAUD, SLOWEST, FASTEST);
    }
    if (bits < 5 || bits > 8) {
      throw new Unfit(SpecSays.BITS, bits);
    }
  }

  /** The parity bit; the numbers are those of RFC 2217. */
  public enum Parity {
    NONE("none"),
    ODD("odd"),
    EVEN("even"),
    MARK("mark"),
    SPACE("space");

    private final String word;

    Parity(String word) {
      this.word = word;
    }

    /** The word used in a link text. */
    public String word() {
      return word;
    }

    /** RFC 2217, SET-PARITY: 1 none, 2 odd, 3 even, 4 mark, 5 space. */
    int rfc2217() {
      return switch (this) {
        case NONE -> 1;
        case ODD -> 2;
        case EVEN -> 3;
        case MARK -> 4;
        case SPACE -> 5;
      };
    }
  }

  /** Stop bits. */
  public enum Stop {
    ONE("1"),
    ONE_AND_A_HALF("1.5"),
    TWO("2");

    private final String word;

    Stop(String word) {
      this.word = word;
    }

    /** The word used in a link text. */
    public String word() {
      return word;
    }

    /** RFC 2217, SET-STOPSIZE: 1 one, 2 two, 3 one and a half. */
    int rfc2217() {
      return switch (this) {
        case ONE -> 1;
        case TWO -> 2;
        case ONE_AND_A_HALF -> 3;
      };
    }
  }

  /** Settings worth trying on an unknown balance, the commonest first. */
  public static List<LineSettings> common() {
    return CommonSettings.all();
  }

  /** As people write it: {@code 9600 8N1}. */
  public String shortText() {
    return baud + " " + bits + Character.toUpperCase(parity.word.charAt(0)) + stop.word;
  }
}
