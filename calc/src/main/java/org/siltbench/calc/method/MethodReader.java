package org.siltbench.calc.method;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.blank.BlankRule;
import org.siltbench.calc.constant.ConstantRule;
import org.siltbench.calc.constant.CountingMass;
import org.siltbench.calc.quantity.Mass;

/** Reads a method's text into its numbers, or tells every fault. */
final class MethodReader {

  private static final double DAY_MINUTES = 1440;
  private static final double WEEK_MINUTES = 7 * DAY_MINUTES;

  private final Values values;

  private MethodReader(Values values) {
    this.values = values;
  }

  static Method read(String text) {
    Values values = new Values(text);
    Method method = new MethodReader(values).method();
    values.close();
    return method;
  }

  private Method method() {
    return new Method(
        values.value("key", MethodTextSays.KEY.with(), "", MethodReader::key),
        values.text("title", MethodTextSays.TITLE.with()),
        values.text("standard", MethodTextSays.STANDARD.with()),
        values.text("edition", MethodTextSays.EDITION.with()),
        values.word("parameter", List.of(Parameter.values()), Parameter::word),
        values.word("taken", List.of(Taken.values()), Taken::word),
        drying(),
        constancy(),
        blank(),
        residue(),
        balance(),
        sample(),
        uncertainty(),
        report(),
        duplicates(),
        ignition());
  }

  private static String key(String text) {
    if (!text.matches("[a-z0-9][a-z0-9.-]{0,39}")) {
      throw new IllegalArgumentException(text);
    }
    return text;
  }

  private Drying drying() {
    return new Drying(
        values.span("dry_celsius", 20, 300),
        values.number("dry_first_min", 1, WEEK_MINUTES, MethodTextSays.MINUTES.with()),
        values.number("dry_later_min", 1, WEEK_MINUTES, MethodTextSays.MINUTES.with()),
        values.number("cool_min", 0, WEEK_MINUTES, MethodTextSays.MINUTES.with()),
        values.number("useful_min", 0, WEEK_MINUTES, MethodTextSays.MINUTES.with()));
  }

  private Constancy constancy() {
    return new Constancy(
        rule("constant"),
        rule("preconstant"),
        values.word("counting_mass", List.of(CountingMass.values()), MethodReader::word),
        values.whole("max_cycles", 1, 99),
        values.milligrams("coarsest_step_mg", 0.0001, 1000));
  }

  /** A rule is none when both of its limits are. */
  private @Nullable ConstantRule rule(String name) {
    Mass absolute = values.milligramsOrNone(name + "_mg", 0.000001, 100_000);
    BigDecimal percent =
        values.orNone(name + "_pct", MethodTextSays.PERCENT.with(), MethodReader::percent);
    ConstantRule.Base base =
        values.word(name + "_base", List.of(ConstantRule.Base.values()), MethodReader::word);
    ConstantRule.Direction direction =
        values.word(
            name + "_direction", List.of(ConstantRule.Direction.values()), MethodReader::word);
    boolean strict = values.word(name + "_strict", List.of(true, false), yes -> yes ? "yes" : "no");
    return absolute == null && percent == null
        ? null
        : new ConstantRule(absolute, percent, base, direction, strict);
  }

  private static BigDecimal percent(String text) {
    BigDecimal percent = Numbers.decimal(text);
    if (percent.signum() <= 0 || percent.compareTo(BigDecimal.valueOf(100)) > 0) {
      throw new IllegalArgumentException(text);
    }
    return percent;
  }

  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private BlankRule blank() {
    return new BlankRule(
        values.word("blank_use", List.of(BlankRule.Use.values()), BlankRule.Use::word),
        values.word(
            "blank_kind",
            List.of(BlankKind.METHOD, BlankKind.FIELD, BlankKind.TRIP, BlankKind.CONTROL),
            BlankKind::word),
        values.whole("blank_min_count", 0, 1000),
        values.milligramsOrNone("blank_limit_mg", 0.000001, 100_000),
        values.numberOrNone("blank_limit_mg_l", 0.000001, 1e9, "mg/L"),
        values.numberOrNone("blank_loss_mg_cm2", 0.000001, 1000, "mg/cm2"));
  }

  private ResidueRule residue() {
    Mass min = values.milligrams("residue_min_mg", 0, 1_000_000);
    Mass max = values.milligrams("residue_max_mg", 0, 1_000_000);
    Mass stop = values.milligrams("residue_stop_below_mg", -100_000, 0);
    if (min.compareTo(max) > 0) {
      values.fault("residue_max_mg", MethodTextSays.NOT_BELOW_LEAST.with());
      return new ResidueRule(min, min, stop);
    }
    return new ResidueRule(min, max, stop);
  }

  private BalanceRule balance() {
    return new BalanceRule(
        values.milligrams("check_limit_mg", 0.000001, 100_000),
        values.whole("check_every", 1, 10_000),
        values.word(
            "missing_check",
            List.of(BalanceRule.MissingCheck.values()),
            BalanceRule.MissingCheck::word),
        values.milligrams("moisture_allowance_mg", 0, 100_000));
  }

  private SampleRule sample() {
    return new SampleRule(
        values.number("holding_days", 0, 3650, MethodTextSays.DAYS.with()),
        values.millilitres("volume_min_ml", 0.001, 1e6),
        values.millilitres("volume_max_ml", 0.001, 1e6),
        values.number("slow_filtration_min", 0, WEEK_MINUTES, MethodTextSays.MINUTES.with()),
        values.whole("batch_size", 1, 10_000),
        values.numberOrAbsent("bag_days", 0, 3650, MethodTextSays.DAYS.with()),
        values.numberOrAbsent("dissolved_from_pct", 0, 1000, "%"),
        values.spanOrAbsent("recovery_pct", 0, 1000));
  }

  private UncertaintyInputs uncertainty() {
    Double probability = values.numberOrNone("coverage_probability_pct", 50, 99.9999, "%");
    Double k = values.numberOrNone("coverage_k", 0.1, 100, MethodTextSays.FACTOR.with());
    if ((probability == null) == (k == null)) {
      values.fault("coverage_k", MethodTextSays.ONE_COVERAGE.with());
      probability = 95.0;
      k = null;
    }
    return new UncertaintyInputs(
        values.number("u_mass_mg", 0, 100_000, "mg"),
        values.number(
            "u_mass_dof", 1, Double.POSITIVE_INFINITY, MethodTextSays.DEGREES_OF_FREEDOM.with()),
        values.number("u_moisture_mg", 0, 100_000, "mg"),
        values.number("u_blank_mg", 0, 100_000, "mg"),
        values.number("u_volume_reading_ml", 0, 1e6, "mL"),
        values.number("u_volume_calibration_pct", 0, 100, "%"),
        values.number("u_volume_temperature_pct", 0, 100, "%"),
        values.number("u_subsampling_pct", 0, 100, "%"),
        probability == null ? null : probability / 100,
        k);
  }

  private ReportRule report() {
    return new ReportRule(
        values.whole("report_digits", 1, 9),
        values.milligramsOrNone("report_limit_residue_mg", 0, 100_000),
        values.number("report_limit_mg_l", 0, 1e9, "mg/L"));
  }

  private DuplicateTerms duplicates() {
    return new DuplicateTerms(
        values.whole("duplicate_every", 0, 10_000),
        values.numberOrNone("duplicate_limit_pct", 0.001, 200, "%"),
        values.number("duplicate_low_factor", 0, 1000, MethodTextSays.REPORTING_LIMITS.with()));
  }

  private @Nullable Ignition ignition() {
    Span celsius =
        values.orNone(
            "ignite_celsius",
            Values.spanExpected("500 to 600", 300, 1200),
            v -> Numbers.span(v, 300, 1200));
    Double minutes =
        values.numberOrNone("ignite_min", 1, WEEK_MINUTES, MethodTextSays.MINUTES.with());
    if ((celsius == null) != (minutes == null)) {
      values.fault("ignite_min", MethodTextSays.IGNITION_TIME.with());
    }
    return celsius == null || minutes == null ? null : new Ignition(celsius, minutes);
  }
}
