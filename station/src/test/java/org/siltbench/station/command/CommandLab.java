package org.siltbench.station.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/** Runs commands in this process against a real lab folder, and keeps what they print. */
public final class CommandLab {

  private final Path lab;
  private final Timebase time;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final List<String> messages = new ArrayList<>();
  private InputStream in = InputStream.nullInputStream();
  private Consumer<String> watcher = line -> {};
  private Clock clock = Clock.systemUTC();
  private LabFolders labs = new LabFolders();
  private boolean terminal;
  private List<CommandEntry> offered = Main.offered();
  private UnaryOperator<LinkSpec> hurried = spec -> spec;

  public CommandLab(Path lab, Timebase time) {
    this.lab = lab;
    this.time = time;
  }

  public CommandLab(Path lab) {
    this(lab, Timebase.system());
  }

  /** Labs of the same chance have the same code. */
  public CommandLab of(RandomGenerator random) {
    labs = new LabFolders(random);
    return this;
  }

  public Path folder() {
    return lab;
  }

  /** Standard input of the next commands. */
  public CommandLab input(String text) {
    in = new java.io.ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  public CommandLab input(InputStream stream) {
    in = stream;
    return this;
  }

  /** These commands alone. */
  public CommandLab offering(CommandEntry... entries) {
    offered = List.of(entries);
    return this;
  }

  /** A practice balance that runs so many times faster, whatever opens it. */
  public CommandLab practice(double faster) {
    hurried =
        spec -> spec instanceof LinkSpec.Practice p ? p.with(p.options().withSpeed(faster)) : spec;
    return this;
  }

  public CommandLab at(Clock other) {
    clock = other;
    return this;
  }

  /** As if a person sat at a terminal. */
  public CommandLab terminal() {
    terminal = true;
    return this;
  }

  /** Sees each line of standard error as it is printed. */
  public CommandLab watching(Consumer<String> eye) {
    watcher = eye;
    return this;
  }

  public int run(String... words) {
    out.reset();
    messages.clear();
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--lab", lab.toString()));
    Surroundings around =
        new Surroundings(
            Console.over(in, out, new LineSplitter(this::message), terminal),
            clock,
            Map.of(),
            lab.getParent(),
            "RK",
            labs,
            (spec, formats) -> new Balances(time, formats).open(hurried.apply(spec)),
            offered);
    return new Program(around).run(all.toArray(new String[0]));
  }

  /** Runs a command that must succeed. */
  public CommandLab ok(String... words) {
    int status = run(words);
    if (status != 0) {
      throw new AssertionError(String.join(" ", words) + ": " + status + "\n" + err());
    }
    return this;
  }

  private synchronized void message(String line) {
    messages.add(line);
    watcher.accept(line);
  }

  public String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  public synchronized String err() {
    return String.join("\n", messages);
  }

  /** The one JSON document on standard output. */
  public Map<String, Object> document() throws NotJson {
    return Json.object(out().strip());
  }

  private static final class LineSplitter extends OutputStream {
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private final Consumer<String> to;

    LineSplitter(Consumer<String> to) {
      this.to = to;
    }

    @Override
    public synchronized void write(int b) throws IOException {
      if (b == '\n') {
        to.accept(line.toString(StandardCharsets.UTF_8));
        line.reset();
      } else {
        line.write(b);
      }
    }
  }
}
