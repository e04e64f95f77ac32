package org.siltbench.station.window;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Count;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.register.RegisterView;

/**
 * A lab that is opened by the first question to it, so that the mass is seen before: its folder and
 * clock are known without. Bench work asks it first, on the bench's thread.
 */
final class LaterLab implements OpenLab {

  private final Path folder;
  private final Clock clock;
  private final Supplier<OpenLab> opener;
  private @Nullable OpenLab lab;

  LaterLab(Path folder, Clock clock, Supplier<OpenLab> opener) {
    this.folder = folder;
    this.clock = clock;
    this.opener = opener;
  }

  /** The lab itself; opened if it was not. */
  synchronized OpenLab opened() {
    OpenLab now = lab;
    if (now == null) {
      now = opener.get();
      lab = now;
    }
    return now;
  }

  @Override
  public Path folder() {
    return folder;
  }

  @Override
  public Clock clock() {
    return clock;
  }

  @Override
  public String code() {
    return opened().code();
  }

  @Override
  public boolean practice() {
    return opened().practice();
  }

  @Override
  public String operator() {
    return opened().operator();
  }

  @Override
  public void operator(String initials) {
    opened().operator(initials);
  }

  @Override
  public RegisterView register() {
    return opened().register();
  }

  @Override
  public List<Entry> act(Function<RegisterView, List<Draft>> rule) {
    return opened().act(rule);
  }

  @Override
  public Map<String, Position> ledgers() {
    return opened().ledgers();
  }

  @Override
  public List<String> lines(String bench, long after, int atMost) {
    return opened().lines(bench, after, atMost);
  }

  @Override
  public int receive(String bench, List<String> lines) {
    return opened().receive(bench, lines);
  }

  @Override
  public long rebuild(Count count) {
    return opened().rebuild(count);
  }

  @Override
  public void export(Appendable out) {
    opened().export(out);
  }

  @Override
  public Entry closeDay() {
    return opened().closeDay();
  }

  @Override
  public void anchor(String kind, String where, String bench, long seq, String head) {
    opened().anchor(kind, where, bench, seq, head);
  }

  @Override
  public synchronized void close() {
    OpenLab now = lab;
    if (now != null) {
      now.close();
    }
  }
}
