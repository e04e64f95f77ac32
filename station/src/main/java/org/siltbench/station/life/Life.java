package org.siltbench.station.life;

import static org.siltbench.station.life.Status.CONSTANT;
import static org.siltbench.station.life.Status.DRYING;
import static org.siltbench.station.life.Status.ISSUED;
import static org.siltbench.station.life.Status.PLANNED;
import static org.siltbench.station.life.Status.POST_WEIGHED;
import static org.siltbench.station.life.Status.PRE_WEIGHED;
import static org.siltbench.station.life.Status.RECEIVED;
import static org.siltbench.station.life.Status.REJECTED;
import static org.siltbench.station.life.Status.REPORTED;

import java.util.EnumSet;
import java.util.Set;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Outcome.Goes;
import org.siltbench.station.life.Outcome.Refuses;

/**
 * The one table that says what may follow what: status x act x role. Times (cooled long enough,
 * gone stale) and masses (the constant-mass rule) are judged elsewhere; this table is about order.
 */
public final class Life {

  /** Filters that never leave the lab. */
  public static final Set<Role> BENCH_ROLES =
      Set.copyOf(EnumSet.of(Role.METHOD_BLANK, Role.CONTROL, Role.REFERENCE));

  private Life() {}

  /** What happens if a filter of this role and status meets this act. */
  public static Outcome outcome(Status from, Act act, Role role) {
    return switch (from) {
      case PLANNED -> planned(act);
      case PRE_WEIGHED -> preWeighed(act, BENCH_ROLES.contains(role));
      case ISSUED -> issued(act);
      case RECEIVED -> received(act);
      case DRYING -> drying(act);
      case POST_WEIGHED -> postWeighed(act);
      case CONSTANT -> constant(act);
      case REPORTED -> reported(act, role == Role.CONTROL);
      case REJECTED -> rejected(act);
    };
  }

  /**
   * The next status.
   *
   * @throws Problem.Refused if the table says no, naming the filter and the way out
   */
  public static Status require(String filter, Status from, Act act, Role role) {
    Outcome outcome = outcome(from, act, role);
    if (outcome instanceof Refuses no) {
      throw refusal(filter, from, no);
    }
    return ((Goes) outcome).to();
  }

  private static Problem.Refused refusal(String filter, Status from, Refuses no) {
    return new Problem.Refused(LifeSays.REFUSED, filter, from.words(), no.words(), no.wordsOut());
  }

  private static Outcome planned(Act act) {
    return switch (act) {
      case PRE_DRY, HOLD -> new Goes(PLANNED);
      case PRE_WEIGH -> new Goes(PRE_WEIGHED);
      case REJECT -> new Goes(REJECTED);
      case LABEL, CLOSE_BAG, REPEAT, AUDIT -> new Refuses(LifeSays.NO_MASS);
      case ISSUE, RETURN, MISS, RECEIVE, DRY, END_DRY, POST_WEIGH, PROVE, IGNITE, RELEASE ->
          new Refuses(LifeSays.NO_PRE_MASS);
    };
  }

  private static Outcome preWeighed(Act act, boolean staysInLab) {
    return switch (act) {
      case PRE_DRY, PRE_WEIGH, REPEAT, AUDIT, LABEL, CLOSE_BAG, HOLD -> new Goes(PRE_WEIGHED);
      case ISSUE -> staysInLab ? new Refuses(LifeSays.STAYS_IN_LAB) : new Goes(ISSUED);
      case RECEIVE -> new Goes(RECEIVED);
      case DRY -> staysInLab ? new Goes(DRYING) : new Refuses(LifeSays.NOT_BACK);
      case REJECT -> new Goes(REJECTED);
      case RETURN, MISS -> new Refuses(LifeSays.NOT_OUT);
      case END_DRY -> notInOven();
      case POST_WEIGH, PROVE, IGNITE -> new Refuses(LifeSays.NOT_DRIED_SINCE);
      case RELEASE -> unfinished();
    };
  }

  private static Outcome issued(Act act) {
    return switch (act) {
      case AUDIT, LABEL, CLOSE_BAG, MISS, HOLD -> new Goes(ISSUED);
      case RETURN -> new Goes(PRE_WEIGHED);
      case RECEIVE -> new Goes(RECEIVED);
      case REJECT -> new Goes(REJECTED);
      case ISSUE -> new Refuses(LifeSays.OUT_ALREADY);
      case PRE_DRY, PRE_WEIGH, REPEAT -> new Refuses(LifeSays.OUT);
      case DRY, POST_WEIGH, PROVE, IGNITE -> new Refuses(LifeSays.NO_RECORD_OF_RETURN);
      case END_DRY -> notInOven();
      case RELEASE -> unfinished();
    };
  }

  private static Outcome received(Act act) {
    return switch (act) {
      case LABEL, HOLD -> new Goes(RECEIVED);
      case DRY -> new Goes(DRYING);
      case REJECT -> new Goes(REJECTED);
      case RECEIVE -> new Refuses(LifeSays.RECEIVED_BEFORE);
      case POST_WEIGH, PROVE, IGNITE -> new Refuses(LifeSays.NOT_DRIED);
      case END_DRY -> notInOven();
      case RELEASE -> unfinished();
      case PRE_DRY, PRE_WEIGH, REPEAT, AUDIT, CLOSE_BAG, ISSUE, RETURN, MISS -> loaded();
    };
  }

  private static Outcome drying(Act act) {
    return switch (act) {
      case DRY, END_DRY, HOLD, LABEL -> new Goes(DRYING);
      case POST_WEIGH -> new Goes(POST_WEIGHED);
      case REJECT -> new Goes(REJECTED);
      case RECEIVE -> new Refuses(LifeSays.RECEIVED_BEFORE);
      case PROVE, IGNITE, RELEASE -> unfinished();
      case REPEAT -> new Refuses(LifeSays.NOTHING_TO_REPEAT);
      case PRE_DRY, PRE_WEIGH, AUDIT, CLOSE_BAG, ISSUE, RETURN, MISS -> loaded();
    };
  }

  private static Outcome postWeighed(Act act) {
    return switch (act) {
      case DRY -> new Goes(DRYING);
      case PROVE -> new Goes(CONSTANT);
      case REPEAT, HOLD, LABEL -> new Goes(POST_WEIGHED);
      case RELEASE -> new Goes(REPORTED);
      case REJECT -> new Goes(REJECTED);
      case POST_WEIGH -> weighedSinceDrying();
      case IGNITE -> new Refuses(LifeSays.NOT_CONSTANT);
      case RECEIVE -> new Refuses(LifeSays.RECEIVED_BEFORE);
      case END_DRY -> notInOven();
      case PRE_DRY, PRE_WEIGH, AUDIT, CLOSE_BAG, ISSUE, RETURN, MISS -> loaded();
    };
  }

  private static Outcome constant(Act act) {
    return switch (act) {
      case DRY, IGNITE -> new Goes(DRYING);
      case PROVE, REPEAT, HOLD, LABEL -> new Goes(CONSTANT);
      case RELEASE -> new Goes(REPORTED);
      case REJECT -> new Goes(REJECTED);
      case POST_WEIGH -> weighedSinceDrying();
      case RECEIVE -> new Refuses(LifeSays.RECEIVED_BEFORE);
      case END_DRY -> notInOven();
      case PRE_DRY, PRE_WEIGH, AUDIT, CLOSE_BAG, ISSUE, RETURN, MISS -> loaded();
    };
  }

  private static Outcome reported(Act act, boolean control) {
    return switch (act) {
      case HOLD, RELEASE, PROVE -> new Goes(REPORTED);
      case REJECT -> new Goes(REJECTED);
      case DRY -> control ? new Goes(DRYING) : alreadyReported();
      case PRE_DRY,
          PRE_WEIGH,
          REPEAT,
          AUDIT,
          LABEL,
          CLOSE_BAG,
          ISSUE,
          RETURN,
          MISS,
          RECEIVE,
          END_DRY,
          POST_WEIGH,
          IGNITE ->
          alreadyReported();
    };
  }

  private static Outcome rejected(Act act) {
    return switch (act) {
      case HOLD, RELEASE -> new Goes(REJECTED);
      case REJECT -> new Refuses(LifeSays.REJECTED_BEFORE);
      case PRE_DRY,
          PRE_WEIGH,
          REPEAT,
          AUDIT,
          LABEL,
          CLOSE_BAG,
          ISSUE,
          RETURN,
          MISS,
          RECEIVE,
          DRY,
          END_DRY,
          POST_WEIGH,
          PROVE,
          IGNITE ->
          new Refuses(LifeSays.REJECTED);
    };
  }

  private static Refuses loaded() {
    return new Refuses(LifeSays.LOADED);
  }

  private static Refuses notInOven() {
    return new Refuses(LifeSays.NOT_IN_OVEN);
  }

  private static Refuses weighedSinceDrying() {
    return new Refuses(LifeSays.WEIGHED_SINCE);
  }

  private static Refuses unfinished() {
    return new Refuses(LifeSays.UNFINISHED);
  }

  private static Refuses alreadyReported() {
    return new Refuses(LifeSays.REPORTED);
  }
}
