package org.siltbench.station.work.receipt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.receipt.Condition.Consequence;
import org.siltbench.station.work.receipt.Reconciliation.Accepted;

/** Takes returned bags in with their field notes. */
public final class Receipt {

  private final Bench bench;

  public Receipt(Bench bench) {
    this.bench = bench;
  }

  /**
   * How to take them in.
   *
   * @param scanned the bags that were scanned on return, if they were
   * @param goOn take in the good lines although others are refused
   * @param markMissing record the bags that have not come back as missing
   */
  public record Options(Optional<Set<String>> scanned, boolean goOn, boolean markMissing) {}

  /** Looks without writing. */
  public Reconciliation look(ReceiptTable table, Options options) {
    return new Reconciler(bench.register(), table, options.scanned()).reconcile();
  }

  /** Takes in the whole table in one act; with a refused line nothing, unless told to go on. */
  public Reconciliation.Done take(ReceiptTable table, Options options) {
    List<Reconciliation> found = new ArrayList<>();
    List<Entry> written =
        bench.act(
            register -> {
              Reconciliation now = new Reconciler(register, table, options.scanned()).reconcile();
              found.add(now);
              boolean stop = !now.refused().isEmpty() && !options.goOn();
              return stop ? List.of() : drafts(now, options, register);
            });
    return new Reconciliation.Done(found.get(found.size() - 1), written);
  }

  private static List<Draft> drafts(Reconciliation found, Options options, RegisterView register) {
    List<Draft> out = new ArrayList<>();
    for (Accepted one : found.accepted()) {
      out.add(received(one));
      one.row().conditions().stream()
          .filter(condition -> condition.consequence() == Consequence.HOLD)
          .forEach(condition -> out.add(hold(one, condition)));
    }
    if (options.markMissing()) {
      found.missing().forEach(filter -> out.add(missing(filter, register)));
    }
    return out;
  }

  private static Draft received(Accepted one) {
    ReceiptRow row = one.row();
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    data.put("filter", row.filter());
    data.put("sample", row.sample());
    data.put("role", one.role());
    row.columns().forEach(data::putIfAbsent);
    row.bag().code().ifPresent(code -> data.put("bag_g", code.grams()));
    if (!one.trip().isEmpty()) {
      data.put("trip", one.trip());
    }
    return new Draft("sample.received", 1, true, data);
  }

  private static Draft hold(Accepted one, Condition condition) {
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    data.put("batch", one.batch());
    data.put("filters", List.of(one.row().filter()));
    data.put("reason", condition.meaning());
    return new Draft("hold", 1, true, data);
  }

  private static Draft missing(String filter, RegisterView register) {
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    data.put("filter", filter);
    data.put("trip", Trips.of(filter, register));
    return new Draft("bag.missing", 1, true, data);
  }
}
