package org.siltbench.station.command;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Standard input, output and error of one command; a test gives its own. Every line is flushed as
 * it is written.
 */
public final class Console {

  private static final int MAX_LINE = 4096;

  private final BufferedReader in;
  private final PrintStream out;
  private final PrintStream err;
  private final boolean terminal;

  private Console(InputStream in, OutputStream out, OutputStream err, boolean terminal) {
    this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    this.out = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.err = new PrintStream(err, true, StandardCharsets.UTF_8);
    this.terminal = terminal;
  }

  /**
   * The streams of this process.
   *
   * <p>From Java 22 on there is a console even where input is a pipe; the property brings back the
   * plain one, which is null then.
   */
  @SuppressWarnings("SystemConsoleNull") // the property set here makes the test for null right
  static Console ofProcess() {
    System.setProperty("jdk.console", "java.base");
    return new Console(System.in, System.out, System.err, System.console() != null);
  }

  /** Streams given by the caller; there is no terminal to ask. */
  public static Console over(InputStream in, OutputStream out, OutputStream err) {
    return over(in, out, err, false);
  }

  /** The same, as if a person sat there or not. */
  static Console over(InputStream in, OutputStream out, OutputStream err, boolean terminal) {
    return new Console(in, out, err, terminal);
  }

  /** A fact, on standard output. */
  public void fact(String line) {
    out.println(line);
    out.flush();
  }

  /** Standard output for a long stream of facts; flush it at the end, do not close it. */
  public Writer writer() {
    return new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), 1 << 16);
  }

  /** A message to the person, on standard error. */
  public void message(String line) {
    err.println(line);
    err.flush();
  }

  /** One JSON document on standard output. */
  public void document(@Nullable Object tree) {
    fact(Json.line(tree));
  }

  /** One JSON object on a line of standard error. */
  public void event(Map<String, ? extends @Nullable Object> event) {
    message(Json.line(event));
  }

  /**
   * The next line of standard input without its end, or null at the end. Long lines are refused.
   */
  public @Nullable String readLine() throws IOException {
    StringBuilder line = new StringBuilder();
    int c = in.read();
    if (c < 0) {
      return null;
    }
    for (; c >= 0 && c != '\n'; c = in.read()) {
      if (line.length() == MAX_LINE) {
        throw new IOException(
            "a line of standard input is longer than " + MAX_LINE + " characters");
      }
      line.append((char) c);
    }
    int end = line.length();
    return end > 0 && line.charAt(end - 1) == '\r' ? line.substring(0, end - 1) : line.toString();
  }

  /** The next line if it is there already, else null: for what is left when the work stops. */
  public @Nullable String readyLine() throws IOException {
    return in.ready() ? readLine() : null;
  }

  /** True where a person sits at a terminal. */
  public boolean terminal() {
    return terminal;
  }

  /** Asks the terminal for a secret without showing it; empty where there is no terminal. */
  public Optional<char[]> secret(String prompt) {
    java.io.Console tty = terminal ? System.console() : null;
    return tty == null ? Optional.empty() : Optional.ofNullable(tty.readPassword("%s", prompt));
  }
}
