package org.siltbench.station.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.siltbench.balance.practice.PracticeServer;

/** A practice balance as a process of its own, on a real pseudo-terminal. */
public final class PracticeProcess implements AutoCloseable {

  private final Path port;
  private final Process process;
  private final BufferedReader answers;
  private final Writer hand;

  public PracticeProcess(Path port, String... words) throws IOException {
    this.port = port;
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp"));
    command.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    command.addAll(List.of(PracticeServer.class.getName(), "--pty", port.toString()));
    command.addAll(List.of(words));
    process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    answers = new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8));
    hand = new OutputStreamWriter(process.getOutputStream(), UTF_8);
    String ready = String.valueOf(answers.readLine());
    if (!ready.startsWith("ready ")) {
      throw new IOException("not ready: " + ready);
    }
  }

  /** The pseudo-terminal is made anew when a reader has left it. */
  public void awaitPort() {
    while (!Files.exists(port)) {
      Thread.onSpinWait();
    }
  }

  public void act(String words) {
    try {
      hand.write(words + "\n");
      hand.flush();
      String answer = answers.readLine();
      if (!"ok".equals(answer)) {
        throw new AssertionError(words + ": " + answer);
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void close() throws IOException, InterruptedException {
    hand.close();
    if (!process.waitFor(10, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("the practice balance did not end with its standard input");
    }
  }
}
