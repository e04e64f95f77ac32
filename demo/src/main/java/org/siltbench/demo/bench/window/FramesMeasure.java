package org.siltbench.demo.bench.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.siltbench.demo.bench.ledger.OpenMeasure;

/** Starts the run of frames on a screen in memory, with the options of the window. */
public final class FramesMeasure {

  private FramesMeasure() {}

  /**
   * Runs it.
   *
   * @param args {@code --minutes N} of real time, 10 unless said otherwise
   */
  public static String run(String[] args) throws IOException, InterruptedException {
    int at = Arrays.asList(args).indexOf("--minutes");
    String minutes = at < 0 || at + 1 >= args.length ? "10" : args[at + 1];
    Path folder = Files.createTempDirectory("siltbench-frames");
    Path answer = folder.resolve("answer.json");
    try (Screen screen = Screen.open()) {
      Path root = Path.of(System.getProperty("siltbench.root", "."));
      ProcessBuilder builder =
          new ProcessBuilder(
              root.resolve("siltbench").toString(),
              "window",
              folder.resolve("lab").toString(),
              minutes,
              answer.toString());
      builder.environment().put("DISPLAY", screen.display());
      builder.environment().put("SILTBENCH_MAIN", FramesRun.class.getName());
      builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
      builder.redirectError(ProcessBuilder.Redirect.INHERIT);
      int status = builder.start().waitFor();
      if (status != 0) {
        throw new IOException("the run ended with " + status);
      }
      return Files.readString(answer);
    } finally {
      OpenMeasure.remove(folder);
    }
  }
}
