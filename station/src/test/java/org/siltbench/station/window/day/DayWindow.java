package org.siltbench.station.window.day;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.siltbench.station.command.PracticeProcess;

/**
 * The day in the window as a process of its own: which print system it finds is a matter of its
 * environment.
 */
final class DayWindow {

  private static final List<String> HANDED_ON =
      List.of("glass.", "monocle.", "prism.", "testfx.", "headless.", "java.awt.", "siltbench.");

  private DayWindow() {}

  /** Folder of the lab, place of the balance's port, and the queue for the labels or nothing. */
  public static void main(String[] words) {
    Path port = Path.of(words[1]);
    try (PracticeProcess balance = balance(port)) {
      new DayByRobot(Path.of(words[0]), port, balance, words[2]).run();
    } catch (Exception | AssertionError e) {
      e.printStackTrace(System.err);
      System.exit(1);
    }
    System.exit(0); // else the toolkit's thread goes on
  }

  static PracticeProcess balance(Path port) throws IOException {
    return new PracticeProcess(port, "--seed", "7", "--speed", "" + Plan.FASTER);
  }

  /** Spends the day, with these variables, and waits for its end. */
  static void spend(Path lab, Path port, Map<String, String> variables, String queue)
      throws IOException, InterruptedException {
    Path said = lab.resolveSibling("window-said");
    ProcessBuilder builder =
        new ProcessBuilder(command(lab, port, queue))
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    builder.environment().putAll(variables);
    Process window = builder.start();
    try {
      if (window.waitFor() != 0) {
        throw new AssertionError(Files.readString(said));
      }
    } finally {
      window.destroyForcibly();
    }
  }

  private static List<String> command(Path lab, Path port, String queue) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    System.getProperties().stringPropertyNames().stream()
        .filter(name -> HANDED_ON.stream().anyMatch(name::startsWith))
        .forEach(name -> words.add("-D" + name + '=' + System.getProperty(name)));
    words.add("-cp");
    words.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    words.addAll(List.of(DayWindow.class.getName(), lab.toString(), port.toString(), queue));
    return words;
  }
}
