package org.siltbench.station.bench;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.Subjects;
import org.siltbench.station.register.Supposed;

/**
 * A bench on which an act can be tried: its rule is asked, and the register answers as if it had
 * been done. Nothing is written, and nobody's rights are asked for.
 */
public final class SupposedBench implements Bench {

  private final Bench bench;
  private final Supposed register;
  private long tried;

  /** On top of what a bench knows now. */
  public SupposedBench(Bench bench, Subjects subjects) {
    this.bench = bench;
    this.register = new Supposed(bench.register(), subjects);
  }

  @Override
  public String code() {
    return bench.code();
  }

  @Override
  public boolean practice() {
    return bench.practice();
  }

  @Override
  public String operator() {
    return bench.operator();
  }

  @Override
  public Clock clock() {
    return bench.clock();
  }

  @Override
  public RegisterView register() {
    return register;
  }

  /** Tries an act. The entries it answers are named as no entry of a ledger ever is. */
  @Override
  public List<Entry> act(Function<RegisterView, List<Draft>> rule) {
    List<Entry> out = new ArrayList<>();
    for (Draft draft : rule.apply(register)) {
      tried++;
      Entry entry =
          new Entry(
              1,
              new EntryRef(bench.code(), Long.MAX_VALUE - 1_000_000 + tried),
              OffsetDateTime.now(bench.clock()),
              new Hlc(Long.MAX_VALUE, 0),
              bench.operator(),
              draft.kind(),
              draft.kv(),
              draft.must(),
              draft.data());
      register.suppose(entry);
      out.add(entry);
    }
    return out;
  }

  /** Nothing to close: it belongs to the bench below. */
  @Override
  public void close() {}
}
