package org.siltbench.labels.print;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The print system's own commands, in plain English whatever the system's language.
 *
 * @param environment what to add to the environment, such as another server
 */
record Lp(Map<String, String> environment) {

  /** The print system of this machine. */
  static final Lp HERE = new Lp(Map.of());

  private static final int SECONDS = 30;

  /** What a command said and how it ended; 127 where it could not be run or did not end. */
  record Said(int status, String text) {
    boolean ok() {
      return status == 0;
    }
  }

  /** True where the system has these commands. */
  static boolean isInstalled() {
    for (String folder : path().split(":")) {
      if (Files.isExecutable(Path.of(folder, "lp"))
          && Files.isExecutable(Path.of(folder, "lpstat"))) {
        return true;
      }
    }
    return false;
  }

  private static String path() {
    String path = System.getenv("PATH");
    return path == null ? "/usr/bin" : path;
  }

  Said run(List<String> words) {
    try {
      ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
      builder.environment().putAll(environment);
      builder.environment().put("LC_ALL", "C");
      Process process = builder.start();
      process.getOutputStream().close();
      return said(process);
    } catch (IOException e) {
      return new Said(127, String.valueOf(e.getMessage()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Said(127, "interrupted");
    }
  }

  /** A few lines only: they fit the pipe, so the command can end before they are read. */
  private static Said said(Process process) throws IOException, InterruptedException {
    if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      return new Said(127, words(process.info()) + " did not answer within " + SECONDS + " s");
    }
    try (InputStream in = process.getInputStream()) {
      return new Said(
          process.exitValue(), new String(in.readAllBytes(), StandardCharsets.UTF_8).strip());
    }
  }

  private static String words(ProcessHandle.Info info) {
    return info.command().orElse("the print system");
  }

  /** The words to print a PDF at its exact size. */
  static List<String> printing(String queue, String size, Path pdf) {
    return new ArrayList<>(
        List.of(
            "lp",
            "-d",
            queue,
            "-t",
            "bag labels",
            // The word media= would cut the size down to whole points.
            "-o",
            "PageSize=" + size,
            "-o",
            "print-scaling=none",
            "--",
            pdf.toString()));
  }
}
