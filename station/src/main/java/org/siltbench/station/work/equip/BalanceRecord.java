package org.siltbench.station.work.equip;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Names;

/**
 * A balance as described by a person.
 *
 * @param name what people call it
 * @param where its link without options, as {@code serial:/dev/ttyUSB0}; weighings over that link
 *     are this balance's
 * @param serial its serial number
 * @param resolutionG smallest displayed step, g
 * @param capacityG capacity, g
 * @param calibrated when it was calibrated
 * @param due when it must be again
 * @param certificateMg standard uncertainty of the certificate, mg
 * @param linearityMg from the certificate, mg
 * @param eccentricityMg from the certificate, mg
 * @param repeatabilityMg from the certificate or own repeats, mg
 */
public record BalanceRecord(
    String name,
    @Nullable String where,
    @Nullable String serial,
    @Nullable BigDecimal resolutionG,
    @Nullable BigDecimal capacityG,
    @Nullable LocalDate calibrated,
    @Nullable LocalDate due,
    @Nullable BigDecimal certificateMg,
    @Nullable BigDecimal linearityMg,
    @Nullable BigDecimal eccentricityMg,
    @Nullable BigDecimal repeatabilityMg) {

  /** Refuses figures below zero and dates the wrong way round. */
  public BalanceRecord {
    name = Names.check("balance", name);
    for (BigDecimal figure :
        new BigDecimal[] {
          resolutionG, capacityG, certificateMg, linearityMg, eccentricityMg, repeatabilityMg
        }) {
      if (figure != null && figure.signum() < 0) {
        throw new Problem.WrongUse(EquipSays.BELOW_ZERO, figure.toPlainString());
      }
    }
    if (calibrated != null && due != null && due.isBefore(calibrated)) {
      throw new Problem.WrongUse(EquipSays.DUE_BEFORE);
    }
  }

  /** Records it; a later record replaces the earlier one, and both stay in the ledger. */
  public Entry record(Bench bench) {
    Facts facts =
        new Facts()
            .put("balance", name)
            .putIf("where", where)
            .putIf("serial", serial)
            .putIf("resolution_g", resolutionG)
            .putIf("capacity_g", capacityG)
            .putIf("calibrated", calibrated == null ? null : (Object) calibrated.toString())
            .putIf("due", due == null ? null : (Object) due.toString())
            .putIf("u_cert_mg", certificateMg)
            .putIf("linearity_mg", linearityMg)
            .putIf("eccentricity_mg", eccentricityMg)
            .putIf("repeatability_mg", repeatabilityMg);
    return bench.act(register -> List.of(facts.draft("balance.described"))).get(0);
  }

  /** What was last recorded of a balance; empty if nothing was. */
  public static Optional<BalanceRecord> of(RegisterView register, String name) {
    return BalanceState.fold(name, register.history(About.balance(name)))
        .flatMap(BalanceState::described)
        .map(fields -> of(name, fields));
  }

  private static BalanceRecord of(String name, Fields fields) {
    return new BalanceRecord(
        name,
        fields.find("where").orElse(null),
        fields.find("serial").orElse(null),
        fields.decimal("resolution_g").orElse(null),
        fields.decimal("capacity_g").orElse(null),
        day(fields, "calibrated"),
        day(fields, "due"),
        fields.decimal("u_cert_mg").orElse(null),
        fields.decimal("linearity_mg").orElse(null),
        fields.decimal("eccentricity_mg").orElse(null),
        fields.decimal("repeatability_mg").orElse(null));
  }

  private static @Nullable LocalDate day(Fields fields, String name) {
    return fields.find(name).map(LocalDate::parse).orElse(null);
  }

  /** True if its calibration has run out on that day. */
  public boolean overdue(LocalDate day) {
    return due != null && due.isBefore(day);
  }

  /** The name under which weighings over a link are recorded: that of the described balance. */
  public static String nameOf(RegisterView register, LinkSpec spec) {
    String where = where(spec);
    for (StateRow row : register.list(About.BALANCE, "", "")) {
      for (Entry entry : register.history(row.subject())) {
        Fields fields = Fields.of(entry);
        if (entry.kind().equals("balance.described") && fields.text("where").equals(where)) {
          return row.subject().id();
        }
      }
    }
    return where;
  }

  /** A link without its options: where the balance stands. */
  public static String where(LinkSpec spec) {
    if (spec instanceof LinkSpec.Serial serial) {
      return "serial:" + serial.port();
    }
    if (spec instanceof LinkSpec.Tcp tcp) {
      return "tcp:" + tcp.host() + ':' + tcp.port();
    }
    if (spec instanceof LinkSpec.Replay replay) {
      return "replay:" + replay.file();
    }
    return spec instanceof LinkSpec.Typed ? "typed" : "practice";
  }
}
