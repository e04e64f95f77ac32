package org.siltbench.balance.practice;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.FormatShelf;
import org.siltbench.balance.format.LineFormat;

/** The words a practice server is started with. */
record ServerOptions(
    @Nullable Path pty,
    int tcp,
    long seed,
    double speed,
    Room room,
    LineFormat format,
    LineFormat.Talk.How talks) {

  static final String USAGE =
      "--pty LINK or --tcp PORT (0 for any), then --seed N, --speed X, --room calm|draughty|shaky,"
          + " --step MG, --format FILE, --talks by-itself|on-key|when-asked";

  private static final Set<String> WORDS =
      Set.of("--pty", "--tcp", "--seed", "--speed", "--room", "--step", "--format", "--talks");

  static ServerOptions parse(String[] args) throws IOException {
    Map<String, String> words = words(args);
    String pty = words.get("--pty");
    String tcp = words.get("--tcp");
    if ((pty == null) == (tcp == null)) {
      throw new IllegalArgumentException("say where: " + USAGE);
    }
    Room room = room(words.getOrDefault("--room", "calm"));
    String step = words.get("--step");
    String format = words.get("--format");
    return new ServerOptions(
        pty == null ? null : Path.of(pty),
        Integer.parseInt(Objects.requireNonNullElse(tcp, "0")),
        Long.parseLong(words.getOrDefault("--seed", "1")),
        speed(words.getOrDefault("--speed", "1")),
        step == null ? room : room.withStep(Double.parseDouble(step)),
        format == null ? LineFormat.standard() : new FormatShelf(Path.of(".")).load(format),
        talks(words.getOrDefault("--talks", "by-itself")));
  }

  private static Map<String, String> words(String[] args) {
    Map<String, String> out = new HashMap<>();
    for (int i = 0; i < args.length; i += 2) {
      if (!WORDS.contains(args[i]) || i + 1 == args.length) {
        throw new IllegalArgumentException("cannot read \"" + args[i] + "\": say " + USAGE);
      }
      out.put(args[i], args[i + 1]);
    }
    return out;
  }

  private static double speed(String text) {
    double speed = Double.parseDouble(text);
    if (!(speed > 0 && speed <= 1000)) {
      throw new IllegalArgumentException("speed must be above 0 and at most 1000");
    }
    return speed;
  }

  private static Room room(String word) {
    return switch (word) {
      case "calm" -> Room.CALM;
      case "draughty" -> Room.DRAUGHTY;
      case "shaky" -> Room.SHAKY;
      default -> throw new IllegalArgumentException("no room " + word + ": say " + USAGE);
    };
  }

  private static LineFormat.Talk.How talks(String word) {
    return switch (word) {
      case "by-itself" -> LineFormat.Talk.How.BY_ITSELF;
      case "on-key" -> LineFormat.Talk.How.ON_KEY;
      case "when-asked" -> LineFormat.Talk.How.WHEN_ASKED;
      default -> throw new IllegalArgumentException("cannot talk " + word + ": say " + USAGE);
    };
  }
}
