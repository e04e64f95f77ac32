package org.siltbench.station.work.check;

import java.util.List;
import java.util.function.Consumer;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.weights.BalanceCheck;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.WeighEvent;

/** Weighs a check weight and records how far off the balance is. */
public final class CheckWeighing {

  private static final int MOST_TRIES = 3;

  private final Bench bench;
  private final PanWatch pan;
  private final String balance;
  private final Mass limit;
  private final Consumer<WeighEvent> listener;

  /**
   * Checks on one balance.
   *
   * @param limit how far off the balance may be under the method
   */
  public CheckWeighing(
      Bench bench, PanWatch pan, String balance, Mass limit, Consumer<WeighEvent> listener) {
    this.bench = bench;
    this.pan = pan;
    this.balance = balance;
    this.limit = limit;
    this.listener = listener;
  }

  /** What a check said, on the disk. */
  public record Checked(CheckWeight weight, Measured measured, BalanceCheck check, Entry entry) {}

  /** Asks for the weight, weighs it, judges, records. */
  public Checked weigh(CheckWeight weight, Phase phase) throws InterruptedException {
    for (int i = 0; i < MOST_TRIES; i++) {
      PanOutcome outcome = pan.weigh(new PanLoad.OfWeight(weight.name(), weight.certified()));
      if (outcome instanceof PanOutcome.Stable stable) {
        Measured seen = Measured.observed(stable, balance, pan.formatName());
        return record(weight, phase, seen);
      }
      PanOutcome.NotTaken no = (PanOutcome.NotTaken) outcome;
      listener.accept(new WeighEvent.Declined("weight " + weight.name(), no.words(), null));
    }
    throw new Problem.Refused(CheckSays.NO_REST, weight.name(), MOST_TRIES);
  }

  private Checked record(CheckWeight weight, Phase phase, Measured seen) {
    Mass u = weight.standardUncertainty();
    Mass expanded = u == null ? Mass.ZERO : u.plus(u);
    BalanceCheck check = BalanceCheck.of(seen.mass(), weight.certified(), expanded, limit);
    Entry entry = bench.act(register -> List.of(facts(weight, phase, seen, check))).get(0);
    Checked checked = new Checked(weight, seen, check, entry);
    listener.accept(new WeighEvent.Recorded(entry, seen));
    return checked;
  }

  private Draft facts(CheckWeight weight, Phase phase, Measured seen, BalanceCheck check) {
    Facts facts =
        new Facts()
            .put("balance", balance)
            .put("weight", weight.name())
            .put("phase", phase.code())
            .put("nominal_g", weight.nominal().toGrams())
            .put("certified_g", weight.certified().toGrams())
            .put("certificate", weight.standardUncertainty() != null)
            .put("reading_g", seen.grams())
            .put("error_mg", check.error().toMilligrams())
            .put("limit_mg", check.limit().toMilligrams())
            .put("pass", check.pass());
    seen.putInto(facts.fields());
    facts.fields().remove("mass_g");
    return facts.draft("check.weighed");
  }
}
