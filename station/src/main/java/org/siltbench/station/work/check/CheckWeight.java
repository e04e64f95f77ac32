package org.siltbench.station.work.check;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;

/**
 * A check weight.
 *
 * @param name what people call it
 * @param nominal its nominal mass
 * @param certified its certified conventional mass; the nominal one without a certificate
 * @param standardUncertainty of the certificate; null without one
 * @param due when it must be calibrated again; null if not recorded
 */
public record CheckWeight(
    String name,
    Mass nominal,
    Mass certified,
    @Nullable Mass standardUncertainty,
    @Nullable LocalDate due) {

  private static final Pattern AMOUNT = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?)\\s*(mg|g|)");

  /**
   * The weight that a person named: one that has been described, else a nominal mass such as {@code
   * 100mg} or {@code 20g}, for which there is then no certificate.
   *
   * @throws Problem.WrongUse if it is neither
   */
  public static CheckWeight named(RegisterView register, String text) {
    Optional<CheckWeight> described = described(register, text.strip());
    return described.orElseGet(() -> nominal(text.strip()));
  }

  /** All that have been described, by name. */
  public static List<CheckWeight> all(RegisterView register) {
    return register.list(About.WEIGHT, "", "").stream()
        .flatMap(row -> described(register, row.subject().id()).stream())
        .toList();
  }

  /** The names of all that the lab has seen, described or only weighed. */
  public static List<String> names(RegisterView register) {
    return register.list(About.WEIGHT, "", "").stream().map(row -> row.subject().id()).toList();
  }

  private static Optional<CheckWeight> described(RegisterView register, String name) {
    List<Entry> history = register.history(About.weight(name));
    for (int i = history.size() - 1; i >= 0; i--) {
      if (history.get(i).kind().equals("weight.described")) {
        return Optional.of(of(name, Fields.of(history.get(i))));
      }
    }
    return Optional.empty();
  }

  private static CheckWeight of(String name, Fields fields) {
    Mass nominal = fields.mass("nominal_g").orElse(Mass.ZERO);
    return new CheckWeight(
        name,
        nominal,
        fields.mass("certified_g").orElse(nominal),
        fields.decimal("u_mg").map(u -> Mass.ofMilligrams(u.toPlainString())).orElse(null),
        fields.find("due").map(CheckWeight::date).orElse(null));
  }

  private static @Nullable LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      return null;
    }
  }

  private static CheckWeight nominal(String text) {
    Matcher amount = AMOUNT.matcher(text);
    if (!amount.matches()) {
      throw new Problem.WrongUse(CheckSays.NO_WEIGHT, text);
    }
    BigDecimal number = new BigDecimal(amount.group(1));
    Mass mass =
        Mass.ofGrams(
            (amount.group(2).equals("mg") ? number.movePointLeft(3) : number).toPlainString());
    if (mass.nanograms() == 0) {
      throw new Problem.WrongUse(CheckSays.NOTHING);
    }
    return new CheckWeight(text, mass, mass, null, null);
  }

  /** True if its calibration has run out on that day. */
  public boolean overdue(LocalDate day) {
    return due != null && due.isBefore(day);
  }
}
