package org.siltbench.demo.bench.all;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the machine says of itself. */
final class Machine {

  private Machine() {}

  static String words() {
    return String.join(
        ", ",
        processor(),
        Runtime.getRuntime().availableProcessors() + " cores",
        memory(),
        first(Path.of("/etc/os-release"), "PRETTY_NAME=")
            .replace("\"", "")
            .concat(" (" + System.getProperty("os.name") + ")"),
        "Java " + System.getProperty("java.vm.version"));
  }

  /** The mean of a minute; "unknown" where the system does not tell. */
  static String load() {
    return lines(Path.of("/proc/loadavg")).stream()
        .map(line -> line.split(" ")[0])
        .findFirst()
        .orElse("unknown");
  }

  private static String processor() {
    return first(Path.of("/proc/cpuinfo"), "model name").replaceFirst("^\\s*:\\s*", "");
  }

  private static String memory() {
    String kibibytes = first(Path.of("/proc/meminfo"), "MemTotal:").replaceAll("\\D", "");
    return kibibytes.isEmpty()
        ? "memory unknown"
        : String.format(Locale.ROOT, "%.0f GiB", Long.parseLong(kibibytes) / 1048576.0);
  }

  private static String first(Path file, String start) {
    return lines(file).stream()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()).strip())
        .findFirst()
        .orElse("unknown");
  }

  private static List<String> lines(Path file) {
    if (!Files.isReadable(file)) {
      return List.of();
    }
    try (Stream<String> lines = Files.lines(file)) {
      return lines.toList();
    } catch (IOException e) {
      throw new UncheckedIOException("The machine's own " + file + " cannot be read", e);
    }
  }
}
