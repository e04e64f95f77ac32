package org.siltbench.balance.link;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import org.siltbench.balance.link.LineSettings.Parity;
import org.siltbench.balance.link.LineSettings.Stop;
import org.siltbench.balance.link.LinkSpec.Practice;
import org.siltbench.balance.link.LinkSpec.Replay;
import org.siltbench.balance.link.LinkSpec.Serial;
import org.siltbench.balance.link.LinkSpec.Tcp;
import org.siltbench.balance.link.LinkSpec.Typed;
import org.siltbench.calc.reason.Unfit;

/** Reads and writes link texts. */
final class SpecText {

  private static final int HIGHEST_PORT = 65_535;
  private static final long DEFAULT_SEED = 1;

  private SpecText() {}

  static LinkSpec parse(String text) {
    int query = text.indexOf('?');
    String head = query < 0 ? text : text.substring(0, query);
    SpecKeys keys = SpecKeys.parse(query < 0 ? "" : text.substring(query + 1));
    LinkSpec spec = parse(head, keys);
    keys.refuseRest(kind(head));
    return spec;
  }

  private static String kind(String head) {
    int colon = head.indexOf(':');
    return colon < 0 ? head : head.substring(0, colon);
  }

  private static LinkSpec parse(String head, SpecKeys keys) {
    String rest = head.substring(Math.min(head.length(), kind(head).length() + 1));
    return switch (kind(head)) {
      case "serial" -> serial(place(rest, SpecSays.A_PORT), keys);
      case "tcp" -> tcp(rest, keys);
      case "replay" -> replay(place(rest, SpecSays.A_FILE), keys);
      case "typed" -> typed(rest, keys);
      case "practice" -> practice(rest, keys);
      default -> throw new Unfit(SpecSays.UNKNOWN, head);
    };
  }

  private static String place(String encoded, SpecSays wanted) {
    if (encoded.isEmpty()) {
      throw new Unfit(SpecSays.NOTHING_BEHIND, wanted.with());
    }
    try {
      return Percent.decode(encoded);
    } catch (IllegalArgumentException notEncoded) {
      return encoded; // a name with a bare % in it is taken as it stands
    }
  }

  private static Serial serial(String port, SpecKeys keys) {
    return new Serial(port, line(keys), options(keys, false));
  }

  private static Tcp tcp(String rest, SpecKeys keys) {
    int colon = rest.lastIndexOf(':');
    if (colon <= 0) {
      throw new Unfit(SpecSays.TCP);
    }
    String host = Percent.decode(rest.substring(0, colon));
    int port = SpecKeys.whole("the port of tcp", rest.substring(colon + 1), 1, HIGHEST_PORT);
    boolean control = keys.yes("rfc2217");
    return new Tcp(host, port, control ? line(keys) : null, options(keys, false));
  }

  private static Replay replay(String file, SpecKeys keys) {
    return new Replay(Path.of(file), options(keys, true));
  }

  private static Typed typed(String rest, SpecKeys keys) {
    if (!rest.isEmpty()) {
      throw new Unfit(SpecSays.TYPED);
    }
    return new Typed(options(keys, false));
  }

  private static Practice practice(String rest, SpecKeys keys) {
    if (!rest.isEmpty()) {
      throw new Unfit(SpecSays.PRACTICE);
    }
    String seed = keys.take("seed");
    long number = seed == null ? DEFAULT_SEED : SpecKeys.wholeLong("seed", seed);
    return new Practice(number, options(keys, true));
  }

  private static LineSettings line(SpecKeys keys) {
    LineSettings d = LineSettings.DEFAULT;
    return new LineSettings(
        keys.whole("baud", d.baud(), 50, 4_000_000),
        keys.whole("bits", d.bits(), 5, 8),
        keys.oneOf("parity", d.parity(), Arrays.asList(Parity.values()), Parity::word),
        keys.oneOf("stop", d.stop(), Arrays.asList(Stop.values()), Stop::word));
  }

  private static SpecOptions options(SpecKeys keys, boolean speed) {
    return new SpecOptions(
        keys.take("format"),
        keys.take("unit"),
        keys.take("ask"),
        keys.duration("every", SpecOptions.EVERY),
        speed ? keys.number("speed") : null);
  }

  static String print(LinkSpec spec) {
    KeyPrinter out = new KeyPrinter(head(spec));
    if (spec instanceof Serial s) {
      out.line(s.line());
    } else if (spec instanceof Tcp t && t.rfc2217() != null) {
      out.put("rfc2217", "yes").line(Objects.requireNonNull(t.rfc2217()));
    } else if (spec instanceof Practice p && p.seed() != DEFAULT_SEED) {
      out.put("seed", Long.toString(p.seed()));
    }
    return out.options(spec.options()).toString();
  }

  private static String head(LinkSpec spec) {
    if (spec instanceof Serial s) {
      return "serial:" + Percent.encode(s.port());
    } else if (spec instanceof Tcp t) {
      return "tcp:" + t.host() + ":" + t.port();
    } else if (spec instanceof Replay r) {
      return "replay:" + Percent.encode(r.file().toString());
    }
    return spec instanceof Typed ? "typed" : "practice";
  }
}
