package org.siltbench.calc.method;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantRule;
import org.siltbench.calc.quantity.Mass;

/** Writes a method as its canonical text. */
final class MethodWriter {

  private final StringBuilder out = new StringBuilder();

  private MethodWriter() {}

  static String write(Method method) {
    MethodWriter writer = new MethodWriter();
    writer.head(method);
    writer.drying(method.drying());
    writer.constancy(method.constancy());
    writer.blank(method);
    writer.limits(method);
    writer.sample(method.sample());
    writer.uncertainty(method.uncertainty());
    writer.report(method);
    writer.ignition(method.ignition());
    return writer.out.toString();
  }

  private void put(String key, String value) {
    out.append(key).append(" = ").append(value).append('\n');
  }

  private void put(String key, double value) {
    put(key, Numbers.plain(value));
  }

  private void put(String key, @Nullable Double value) {
    put(key, value == null ? "none" : Numbers.plain(value));
  }

  private void put(String key, @Nullable Mass value) {
    put(key, value == null ? "none" : value.toMilligrams());
  }

  private void put(String key, Span value) {
    put(key, Numbers.plain(value.low()) + " to " + Numbers.plain(value.high()));
  }

  private void head(Method m) {
    put("key", m.key());
    put("title", m.title());
    put("standard", m.standard());
    put("edition", m.edition());
    put("parameter", m.parameter().word());
    put("taken", m.taken().word());
  }

  private void drying(Drying d) {
    put("dry_celsius", d.celsius());
    put("dry_first_min", d.firstMinutes());
    put("dry_later_min", d.laterMinutes());
    put("cool_min", d.coolMinutes());
    put("useful_min", d.usefulMinutes());
  }

  private void constancy(Constancy c) {
    rule("constant", c.postRule());
    rule("preconstant", c.preRule());
    put("counting_mass", MethodReader.word(c.counts()));
    put("max_cycles", c.maxCycles());
    put("coarsest_step_mg", c.coarsest());
  }

  private void rule(String name, @Nullable ConstantRule rule) {
    put(name + "_mg", rule == null ? null : rule.absolute());
    BigDecimal percent = rule == null ? null : rule.percent();
    put(name + "_pct", percent == null ? "none" : percent.toPlainString());
    put(name + "_base", MethodReader.word(rule == null ? ConstantRule.Base.RESIDUE : rule.base()));
    put(
        name + "_direction",
        MethodReader.word(rule == null ? ConstantRule.Direction.BOTH : rule.direction()));
    put(name + "_strict", rule == null || rule.strict() ? "yes" : "no");
  }

  private void blank(Method m) {
    put("blank_use", m.blank().use().word());
    put("blank_kind", m.blank().kind().word());
    put("blank_min_count", m.blank().minCount());
    put("blank_limit_mg", m.blank().limit());
    put("blank_limit_mg_l", m.blank().limitMgPerL());
    put("blank_loss_mg_cm2", m.blank().lossMgPerCm2());
  }

  private void limits(Method m) {
    put("residue_min_mg", m.residue().min());
    put("residue_max_mg", m.residue().max());
    put("residue_stop_below_mg", m.residue().stopBelow());
    put("check_limit_mg", m.balance().checkLimit());
    put("check_every", m.balance().checkEvery());
    put("missing_check", m.balance().missingCheck().word());
    put("moisture_allowance_mg", m.balance().moistureAllowance());
  }

  private void sample(SampleRule s) {
    put("holding_days", s.holdingDays());
    put("volume_min_ml", s.minVolume().toMillilitres());
    put("volume_max_ml", s.maxVolume().toMillilitres());
    put("slow_filtration_min", s.slowMinutes());
    put("batch_size", s.batchSize());
    put("bag_days", s.bagDays());
    put("dissolved_from_pct", s.dissolvedFromPct());
    Span recovery = s.recoveryPct();
    if (recovery == null) {
      put("recovery_pct", "none");
    } else {
      put("recovery_pct", recovery);
    }
  }

  private void uncertainty(UncertaintyInputs u) {
    put("u_mass_mg", u.massMg());
    put("u_mass_dof", u.massDof());
    put("u_moisture_mg", u.moistureMg());
    put("u_blank_mg", u.blankMg());
    put("u_volume_reading_ml", u.volumeReadingMl());
    put("u_volume_calibration_pct", u.volumeCalibrationPct());
    put("u_volume_temperature_pct", u.volumeTemperaturePct());
    put("u_subsampling_pct", u.subsamplingPct());
    Double probability = u.probability();
    put("coverage_probability_pct", probability == null ? null : percent(probability));
    put("coverage_k", u.k());
  }

  /** A probability as per cent without the tail that binary fractions leave. */
  private static Double percent(double probability) {
    return Math.rint(probability * 1e8) / 1e6;
  }

  private void report(Method m) {
    put("report_digits", m.report().digits());
    put("report_limit_residue_mg", m.report().limitResidue());
    put("report_limit_mg_l", m.report().limitMgPerL());
    put("duplicate_every", m.duplicates().everySamples());
    put("duplicate_limit_pct", m.duplicates().limitPct());
    put("duplicate_low_factor", m.duplicates().lowFactor());
  }

  private void ignition(@Nullable Ignition ignition) {
    if (ignition == null) {
      put("ignite_celsius", "none");
      put("ignite_min", "none");
    } else {
      put("ignite_celsius", ignition.celsius());
      put("ignite_min", ignition.minutes());
    }
  }
}
