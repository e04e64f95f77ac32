package org.siltbench.station.work.preweigh;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.lot.LotMasses;
import org.siltbench.station.work.lot.MassWindow;
import org.siltbench.station.work.weigh.Measured;

/** Masses that did not come over a link: keyed in twice, or written down by hand before. */
public final class KeyedMasses {

  private static final Mass MOST = Mass.ofGrams("1000");

  private KeyedMasses() {}

  /**
   * One mass stated for one filter.
   *
   * @param filter its ID
   * @param grams the mass with the digits that were displayed
   * @param at when it was weighed, as stated; null for now
   */
  public record Stated(String filter, String grams, @Nullable OffsetDateTime at) {}

  /**
   * A mass from two typings.
   *
   * @return the digits, or empty where the two differ
   * @throws Problem.WrongUse if a typing is no mass in grams
   */
  public static Optional<String> twice(String first, String second) {
    return grams(first).equals(grams(second)) ? Optional.of(grams(first)) : Optional.empty();
  }

  /** The digits of a typed mass in grams; a comma is read as the decimal point. */
  public static String grams(String typed) {
    String text = typed.strip().replace(',', '.').replaceFirst("(?i)\\s*g$", "");
    try {
      Mass mass = Mass.ofGrams(text);
      if (mass.nanograms() > 0 && mass.compareTo(MOST) < 0) {
        return new BigDecimal(text).toPlainString();
      }
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(PreWeighSays.NO_MASS, shown(typed));
    }
    throw new Problem.WrongUse(PreWeighSays.NOT_POSSIBLE, text);
  }

  private static String shown(String typed) {
    return typed.length() > 30 ? typed.substring(0, 30) + "…" : typed;
  }

  /** Records masses of clean filters, all or none. They are marked keyed for good. */
  public static List<Entry> record(
      Bench bench, String balance, List<Stated> masses, @Nullable MassWindow window) {
    return bench.act(
        register ->
            masses.stream()
                .map(
                    one ->
                        PreRecord.draft(
                            turn(register, one, window),
                            "result",
                            Measured.keyed(one.grams(), balance, one.at())))
                .toList());
  }

  private static Turn turn(RegisterView register, Stated one, @Nullable MassWindow given) {
    FilterState filter = Filters.require(register, one.filter());
    Life.require(filter.id(), filter.status(), Act.PRE_WEIGH, filter.role());
    if (!filter.pre().isEmpty()) {
      throw new Problem.Refused(PreWeighSays.HAS_MASS, filter.id());
    }
    Optional<MassWindow> window =
        given != null ? Optional.of(given) : LotMasses.window(register, filter.lot());
    if (window.isPresent() && !window.get().holds(Mass.ofGrams(one.grams()))) {
      throw new Problem.Refused(
          PreWeighSays.OUTSIDE_WINDOW, filter.id(), one.grams(), window.get().text());
    }
    return new Turn(filter.id(), 1, "");
  }
}
