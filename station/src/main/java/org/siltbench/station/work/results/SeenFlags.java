package org.siltbench.station.work.results;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.LotState;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.life.Stay;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.receipt.Condition;

/** What the bench saw happen to a filter, as flags of its result. */
final class SeenFlags {

  private static final double SALT_US_CM = 5000;

  private final RegisterView register;
  private final Method method;
  private final CheckCover checks;
  private final Optional<LotState> lot;
  private final boolean practice;

  SeenFlags(
      RegisterView register, BatchState batch, Method method, CheckCover checks, boolean practice) {
    this.register = register;
    this.method = method;
    this.checks = checks;
    this.practice = practice;
    this.lot =
        LotState.fold(
            batch.lot(), register.history(org.siltbench.station.life.About.lot(batch.lot())));
  }

  Set<Flag> of(FilterState state) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    state.record().ifPresent(record -> field(flags, record, state));
    state.pre().forEach(weighed -> weighing(flags, weighed));
    state.post().forEach(weighed -> weighing(flags, weighed));
    heat(flags, state);
    conditioning(flags, state);
    add(flags, !state.weighedTwice().isEmpty(), Flag.TWICE_WEIGHED);
    add(flags, corrected(state), Flag.CORRECTED);
    add(flags, practice, Flag.PRACTICE);
    return flags;
  }

  private static void add(Set<Flag> flags, boolean when, Flag flag) {
    if (when) {
      flags.add(flag);
    }
  }

  private void field(Set<Flag> flags, SampleRecord record, FilterState state) {
    for (String word : record.text("condition").split("\\+")) {
      Condition.of(word).flatMap(SeenFlags::flag).ifPresent(flags::add);
    }
    add(flags, !record.text("volume_range_ml").isEmpty(), Flag.VOLUME_RANGE);
    add(flags, conductivity(record) > SALT_US_CM, Flag.SALT);
    holding(flags, record);
    slow(flags, record);
    bag(flags, record, state);
    sand(flags, record);
    add(flags, oldLabel(record, state), Flag.OLD_LABEL);
  }

  private static double conductivity(SampleRecord record) {
    return record.fields().number("conductivity_us_cm", 0);
  }

  private static boolean oldLabel(SampleRecord record, FilterState state) {
    return record.fields().mass("bag_g").isPresent()
        && !record.fields().mass("bag_g").equals(state.preMass().map(Weighed::mass));
  }

  private void holding(Set<Flag> flags, SampleRecord record) {
    Fields fields = record.fields();
    Optional<OffsetDateTime> collected = fields.time("collected");
    Optional<OffsetDateTime> filtered =
        fields.time("filtered_from").or(() -> fields.time("filtered_to"));
    if (collected.isPresent() && filtered.isPresent()) {
      double days = Duration.between(collected.get(), filtered.get()).toSeconds() / 86_400.0;
      add(flags, days > method.sample().holdingDays(), Flag.LATE_FILTRATION);
    }
  }

  private void slow(Set<Flag> flags, SampleRecord record) {
    Optional<OffsetDateTime> from = record.fields().time("filtered_from");
    Optional<OffsetDateTime> to = record.fields().time("filtered_to");
    if (from.isPresent() && to.isPresent()) {
      double minutes = Duration.between(from.get(), to.get()).toSeconds() / 60.0;
      add(flags, minutes > method.sample().slowMinutes(), Flag.SLOW_FILTRATION);
    }
  }

  /** From the end of the filtration, in the bag, to the oven. */
  private void bag(Set<Flag> flags, SampleRecord record, FilterState state) {
    Fields fields = record.fields();
    Optional<OffsetDateTime> filtered =
        fields.time("filtered_to").or(() -> fields.time("filtered_from"));
    Optional<Stay> oven =
        state.stays().stream().filter(stay -> stay.purpose().equals("post")).findFirst();
    Double most = method.sample().bagDays();
    if (most != null && filtered.isPresent() && oven.isPresent()) {
      double days = Duration.between(filtered.get(), oven.get().in()).toSeconds() / 86_400.0;
      add(flags, days > most, Flag.LATE_OVEN);
    }
  }

  /** Sand left in the bottle of an aliquot never reached the filter in its share. */
  private static void sand(Set<Flag> flags, SampleRecord record) {
    boolean left =
        List.of(record.text("condition").split("\\+")).contains(Condition.SAND_LEFT.code());
    add(flags, left && record.text("taken").equals("aliquot"), Flag.SAND_IN_ALIQUOT);
  }

  private static Optional<Flag> flag(Condition condition) {
    return switch (condition) {
      case OK -> Optional.empty();
      case TORN -> Optional.of(Flag.TORN);
      case TORN_LOSS -> Optional.of(Flag.RESIDUE_LOST);
      case STUCK -> Optional.of(Flag.STUCK);
      case RESIDUE_IN_BAG -> Optional.of(Flag.RINSED_IN);
      case DEBRIS_REMOVED -> Optional.of(Flag.DEBRIS_REMOVED);
      case MOULD -> Optional.of(Flag.MOULD);
      case LEAKED -> Optional.of(Flag.LEAKED);
      case TWO_IN_BAG -> Optional.of(Flag.TWO_IN_BAG);
      case SAND_LEFT -> Optional.of(Flag.SAND_LEFT);
      case OVERFILLED -> Optional.of(Flag.OVERFILLED);
    };
  }

  private void weighing(Set<Flag> flags, Weighed weighed) {
    add(flags, weighed.moistureMg() > weighed.resolutionMg(), Flag.MOISTURE);
    add(flags, weighed.keyed(), Flag.KEYED);
    add(flags, weighed.pressed(), Flag.TWO_PRESSES);
    add(flags, !weighed.observed() && !weighed.keyed(), Flag.STATED);
    switch (checks.around(weighed)) {
      case MISSING -> flags.add(Flag.CHECK_MISSING);
      case FAILED -> flags.add(Flag.CHECK_FAILED);
      case PASSED -> {
        // nothing speaks against it
      }
    }
    add(flags, checks.inSpite(weighed).isPresent(), Flag.CHECK_OVERRIDDEN);
  }

  private void heat(Set<Flag> flags, FilterState state) {
    for (Weighed weighed : state.post()) {
      for (Stay stay : state.stays()) {
        if (stay.cycle().equals(weighed.cycle())) {
          cooling(flags, weighed, stay);
        }
      }
    }
    add(flags, state.stays().stream().anyMatch(stay -> !stay.inRange()), Flag.OVEN_OUT);
    add(flags, state.stays().stream().anyMatch(stay -> !stay.observed()), Flag.STATED);
  }

  private static void cooling(Set<Flag> flags, Weighed weighed, Stay stay) {
    add(flags, stay.cooledUntil().filter(weighed.at()::isBefore).isPresent(), Flag.WEIGHED_WARM);
    add(flags, stay.usefulUntil().filter(weighed.at()::isAfter).isPresent(), Flag.WEIGHED_STALE);
  }

  /** Loaded filters are dried; so must the clean ones have been, or the residue is too low. */
  private void conditioning(Set<Flag> flags, FilterState state) {
    boolean lotUndried = lot.filter(LotState::undried).isPresent();
    add(flags, lotUndried && state.lastPreStay().isEmpty(), Flag.CONDITIONING);
  }

  private boolean corrected(FilterState state) {
    boolean masses =
        state.weighings().stream()
            .anyMatch(weighed -> !register.amendmentsOf(weighed.ref()).isEmpty());
    return masses
        || state.records().stream().anyMatch(r -> !register.amendmentsOf(r.ref()).isEmpty());
  }
}
