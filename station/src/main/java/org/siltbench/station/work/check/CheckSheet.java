package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.register.RegisterView;

/**
 * The checks of one balance with one weight, as a person reads them.
 *
 * @param balance the balance's name
 * @param today whether it was checked today, with any weight
 * @param lines its checks with this weight, newest first
 * @param chart their control chart; null without checks
 * @param signals the run rules that are broken, newest first
 */
public record CheckSheet(
    String balance,
    CheckState today,
    List<Line> lines,
    @Nullable ControlChart chart,
    List<Signal> signals) {

  /** One check; figures as they were recorded. */
  public record Line(
      OffsetDateTime at,
      String weight,
      String phase,
      String reading,
      String error,
      String limit,
      boolean pass) {}

  /**
   * A run rule that is broken.
   *
   * @param at the check that completes the pattern
   * @param rule the rule's stable word
   */
  public record Signal(OffsetDateTime at, String rule) {}

  /**
   * Reads it.
   *
   * @param weight the name of one weight; empty for all of them
   */
  public static CheckSheet of(
      RegisterView register, String balance, String weight, LocalDate day, ZoneId zone) {
    List<Check> checks =
        BalanceState.fold(balance, register.history(About.balance(balance)))
            .map(BalanceState::checks)
            .orElse(List.of())
            .stream()
            .filter(c -> weight.isEmpty() || c.fields().text("weight").equals(weight))
            .toList();
    List<Signal> signals = new ArrayList<>();
    CheckChart.signals(checks)
        .forEach(s -> signals.add(new Signal(checks.get(s.place()).at(), s.rule().name())));
    Collections.reverse(signals);
    List<Line> lines = new ArrayList<>(checks.stream().map(CheckSheet::line).toList());
    Collections.reverse(lines);
    return new CheckSheet(
        balance,
        CheckState.of(register, balance, day, zone),
        lines,
        CheckChart.of(checks),
        signals);
  }

  private static Line line(Check check) {
    return new Line(
        check.at(),
        check.fields().text("weight"),
        check.phase(),
        check.fields().text("reading_g"),
        check.fields().text("error_mg"),
        check.fields().text("limit_mg"),
        check.pass());
  }

  /** The newest check, if there is one. */
  public Optional<Line> last() {
    return lines.stream().findFirst();
  }
}
