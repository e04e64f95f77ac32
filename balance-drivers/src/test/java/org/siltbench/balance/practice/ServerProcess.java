package org.siltbench.balance.practice;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A practice server as the process of its own that it is. */
final class ServerProcess implements AutoCloseable {

  private final Process process;
  private final BufferedReader answers;
  private final Writer hand;
  private final String link;

  ServerProcess(String... words) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp"));
    command.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    command.add(PracticeServer.class.getName());
    command.addAll(List.of(words));
    process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    answers = new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8));
    hand = new OutputStreamWriter(process.getOutputStream(), UTF_8);
    String ready = String.valueOf(answers.readLine());
    if (!ready.startsWith("ready ")) {
      throw new IOException("not ready: " + ready);
    }
    link = ready.substring("ready ".length());
  }

  String link() {
    return link;
  }

  String say(String act) throws IOException {
    hand.write(act + "\n");
    hand.flush();
    return answers.readLine();
  }

  @Override
  public void close() throws IOException, InterruptedException {
    hand.close();
    if (!process.waitFor(10, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("the server did not end with its standard input");
    }
  }
}
