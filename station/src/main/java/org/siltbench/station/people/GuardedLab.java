package org.siltbench.station.people;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Count;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.register.RegisterView;

/**
 * A lab where writing asks who is there, at each act: entries carry the initials of who was let in.
 * Reading asks nothing.
 */
public final class GuardedLab implements OpenLab {

  /**
   * Kinds that only a supervisor may write: releasing results, voiding a filter, weighing on in
   * spite of a check.
   */
  private static final Set<String> SUPERVISED =
      Set.of("release", "filter.rejected", "check.overridden");

  private final OpenLab lab;
  private final Supplier<Person> door;

  /**
   * Guards an opened lab.
   *
   * @param door lets the operator in, or throws {@link Problem.Refused}
   */
  public GuardedLab(OpenLab lab, Supplier<Person> door) {
    this.lab = lab;
    this.door = door;
  }

  /** A door that is passed once: whoever was let in stays in. */
  public static Supplier<Person> once(Supplier<Person> door) {
    return new Supplier<>() {
      private @Nullable Person inside;

      @Override
      public synchronized Person get() {
        Person person = inside;
        if (person == null) {
          person = door.get();
          inside = person;
        }
        return person;
      }
    };
  }

  /** The same lab for one act of somebody else, who was let in for it alone. */
  public OpenLab as(Person other) {
    return new GuardedLab(lab, () -> other);
  }

  private static void need(Person person, Right right, String what) {
    if (!person.right().includes(right)) {
      throw new Problem.Refused(
          right == Right.SUPERVISE ? PeopleSays.SUPERVISE_NEEDED : PeopleSays.RIGHT_NEEDED,
          person.initials(),
          what,
          right.code());
    }
  }

  @Override
  public List<Entry> act(Function<RegisterView, List<Draft>> rule) {
    Person person = door.get();
    need(person, Right.WEIGH, "record");
    return lab.act(
        view -> {
          lab.operator(person.initials());
          List<Draft> drafts = rule.apply(view);
          for (Draft draft : drafts) {
            if (SUPERVISED.contains(draft.kind()) || overrides(draft)) {
              need(person, Right.SUPERVISE, "write \"" + draft.kind() + '"');
            }
          }
          return drafts;
        });
  }

  private static boolean overrides(Draft draft) {
    Object override = draft.data().get("override");
    return override != null && !Boolean.FALSE.equals(override);
  }

  @Override
  public Entry closeDay() {
    Person person = door.get();
    need(person, Right.WEIGH, "close the day");
    lab.operator(person.initials());
    return lab.closeDay();
  }

  @Override
  public String code() {
    return lab.code();
  }

  @Override
  public boolean practice() {
    return lab.practice();
  }

  @Override
  public String operator() {
    return lab.operator();
  }

  @Override
  public void operator(String initials) {
    lab.operator(initials);
  }

  @Override
  public Clock clock() {
    return lab.clock();
  }

  @Override
  public RegisterView register() {
    return lab.register();
  }

  @Override
  public Path folder() {
    return lab.folder();
  }

  @Override
  public Map<String, Position> ledgers() {
    return lab.ledgers();
  }

  @Override
  public List<String> lines(String bench, long after, int atMost) {
    return lab.lines(bench, after, atMost);
  }

  @Override
  public int receive(String bench, List<String> lines) {
    return lab.receive(bench, lines);
  }

  @Override
  public long rebuild(Count count) {
    return lab.rebuild(count);
  }

  @Override
  public void export(Appendable out) {
    lab.export(out);
  }

  @Override
  public void anchor(String kind, String where, String bench, long seq, String head) {
    lab.anchor(kind, where, bench, seq, head);
  }

  @Override
  public void close() {
    lab.close();
  }
}
