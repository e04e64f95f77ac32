package org.siltbench.station.work.batch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.LotState;
import org.siltbench.station.life.Role;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Names;
import org.siltbench.station.work.lot.NewLot;
import org.siltbench.station.work.method.MethodBook;

/**
 * A batch to make.
 *
 * @param name what people call it
 * @param lot the maker's lot
 * @param method the method's key
 * @param count how many filters in all
 * @param roles how many of them are blanks, controls, spares; the rest are for samples
 * @param duplicates how many of the samples' filters are the second of a pair
 */
public record NewBatch(
    String name, String lot, String method, int count, Map<Role, Integer> roles, int duplicates) {

  /** Refuses a batch of nothing, or more of a role than there are filters. */
  public NewBatch {
    name = Names.check("batch", name);
    lot = Names.check("lot", lot);
    roles = Map.copyOf(roles);
    int special = roles.values().stream().mapToInt(Integer::intValue).sum();
    if (count < 1) {
      throw new Problem.WrongUse(BatchSays.NO_FILTERS);
    }
    if (special > count || roles.values().stream().anyMatch(n -> n < 0)) {
      throw new Problem.WrongUse(BatchSays.TOO_MANY_ROLES, count, special);
    }
    if (duplicates < 0 || 2 * duplicates > count - special) {
      throw new Problem.WrongUse(BatchSays.TOO_MANY_DUPLICATES, duplicates);
    }
  }

  /** What was made. */
  public record Made(BatchState batch, boolean newLot) {}

  /** Makes the batch and its filter IDs. */
  public Made record(Bench bench, MethodBook methods) {
    boolean[] newLot = new boolean[1];
    String[] code = new String[1];
    bench.act(
        register -> {
          requireNewName(register);
          List<Draft> drafts = new ArrayList<>(methods.adopt(register, method));
          newLot[0] = LotState.fold(lot, register.history(About.lot(lot))).isEmpty();
          if (newLot[0]) {
            drafts.add(NewLot.namedOnly(lot).draft(false));
          }
          BatchCode next = nextCode(register, bench.code());
          code[0] = next.text();
          drafts.add(draft(next));
          return drafts;
        });
    return new Made(Batches.require(bench.register(), code[0]), newLot[0]);
  }

  private void requireNewName(RegisterView register) {
    if (!Batches.named(register, name).isEmpty()) {
      throw new Problem.Refused(BatchSays.EXISTS, name);
    }
  }

  private static BatchCode nextCode(RegisterView register, String bench) {
    int last =
        register.list(About.BATCH, "", "").stream()
            .map(row -> new BatchCode(row.subject().id()))
            .filter(code -> code.bench().text().equals(bench))
            .mapToInt(BatchCode::serial)
            .max()
            .orElse(0);
    try {
      return BatchCode.of(new BenchCode(bench), last + 1);
    } catch (IllegalArgumentException e) {
      throw new Problem.Refused(BatchSays.CODES_USED_UP);
    }
  }

  private Draft draft(BatchCode code) {
    List<Map<String, Object>> filters = new ArrayList<>();
    List<FilterId> ids = ids(code);
    List<Role> order = order();
    int samples = Collections.frequency(order, Role.SAMPLE);
    for (int i = 0; i < ids.size(); i++) {
      Map<String, Object> filter = new LinkedHashMap<>();
      filter.put("filter", ids.get(i).text());
      filter.put("role", order.get(i).code());
      if (isDuplicate(i, samples)) {
        filter.put("duplicate", true);
      }
      filters.add(filter);
    }
    return new Facts()
        .put("batch", code.text())
        .put("name", name)
        .put("lot", lot)
        .put("method", method)
        .put("filters", filters)
        .draft("batch.created");
  }

  /** Duplicates stand evenly among the samples, each right behind the one that it repeats. */
  private boolean isDuplicate(int index, int samples) {
    return index < samples
        && (long) (index + 1) * duplicates / samples > (long) index * duplicates / samples;
  }

  private List<FilterId> ids(BatchCode code) {
    try {
      return code.filters(count);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(BatchSays.TOO_LARGE, count, Elsewhere.words(e));
    }
  }

  /** Samples first, then the others in the order of the roles. */
  private List<Role> order() {
    List<Role> order = new ArrayList<>();
    for (Role role : Role.values()) {
      if (role != Role.SAMPLE) {
        order.addAll(Collections.nCopies(roles.getOrDefault(role, 0), role));
      }
    }
    order.addAll(0, Collections.nCopies(count - order.size(), Role.SAMPLE));
    return order;
  }
}
