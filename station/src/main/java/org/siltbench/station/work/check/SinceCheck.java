package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.OptionalInt;
import org.siltbench.calc.method.BalanceRule;
import org.siltbench.calc.method.Method;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.method.MethodBook;

/**
 * How many masses a balance has told since its last passed check of a day, or since a supervisor
 * said to weigh on: all that stand in the register, whichever run, process or bench wrote them.
 * Repeats and audits count, and a mass taken back, for they lay on the pan; a mass keyed in did
 * not.
 */
final class SinceCheck {

  private static final String[] KINDS = {"weighing", "check.weighed", "check.overridden"};

  private final String balance;
  private int passed;
  private OptionalInt overridden = OptionalInt.empty();

  private SinceCheck(String balance) {
    this.balance = balance;
  }

  /** The weighings of a balance from the start of a day on. */
  static int count(RegisterView register, String balance, LocalDate day, ZoneId zone) {
    SinceCheck since = new SinceCheck(balance);
    register.since(day.atStartOfDay(zone).toInstant().toEpochMilli(), since::take, KINDS);
    return since.overridden.orElse(since.passed);
  }

  /** The fewest weighings after which an adopted method stops for a bracketing check. */
  static OptionalInt strictest(RegisterView register) {
    return register.list(About.METHOD, "", "").stream()
        .flatMap(row -> MethodBook.adopted(register, row.subject().id()).stream())
        .map(entry -> Method.parse(Fields.of(entry).text("text")).balance())
        .filter(rule -> rule.missingCheck() == BalanceRule.MissingCheck.STOP)
        .mapToInt(BalanceRule::checkEvery)
        .min();
  }

  private void take(Entry entry) {
    Fields data = Fields.of(entry);
    if (!data.text("balance").equals(balance)) {
      return;
    }
    if (entry.kind().equals("weighing")) {
      weighed(data);
    } else if (!data.flag("void")) {
      said(entry.kind(), data);
    }
  }

  private void weighed(Fields data) {
    if (!data.flag("keyed")) {
      passed++;
      overridden = overridden.isEmpty() ? overridden : OptionalInt.of(overridden.getAsInt() + 1);
    }
  }

  /** Any check ends an override; only a passed one begins the count anew. */
  private void said(String kind, Fields data) {
    boolean check = kind.equals("check.weighed");
    overridden = check ? OptionalInt.empty() : OptionalInt.of(0);
    passed = check && data.flag("pass") ? 0 : passed;
  }
}
