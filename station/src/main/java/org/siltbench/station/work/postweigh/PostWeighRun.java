package org.siltbench.station.work.postweigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.id.Scan;
import org.siltbench.calc.method.BalanceRule;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.check.CheckRound;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * Post-weighs by scans: the pan at zero, a scan, a load, stable, recorded, unloaded, the next scan.
 * A scan is read only when the pan is back at zero, so that no mass can go to another filter's ID.
 */
public final class PostWeighRun {

  private final PanWatch pan;
  private final Ids ids;
  private final PostWeighSettings settings;
  private final PostRecord record;
  private final CheckRound checks;
  private final Listener listener;

  private final List<PostWeighReport.Done> weighings = new ArrayList<>();
  private final List<PostWeighReport.Refusal> refused = new ArrayList<>();

  /** Who is told. */
  public interface Listener extends Consumer<WeighEvent> {

    /** A mass is on the disk. */
    void recorded(PostWeighReport.Done done);

    /** Something the person should know before the load. */
    void hint(String filter, Words text);

    /** A dish was named: its bag is asked for once. */
    default void askBag(String filter, String dish) {}

    /** A bag was named: the dish of its filter is asked for once. */
    default void askDish(String filter, String dish) {}

    /** The mass just refused could be recorded as it is, if the person says so. */
    default void surprising(String filter) {}
  }

  /** A run over one balance. */
  public static PostWeighRun of(
      Bench bench,
      MethodBook methods,
      PanWatch pan,
      Ids ids,
      PostWeighSettings settings,
      Listener listener) {
    PostRecord record = new PostRecord(bench, methods, settings);
    CheckRound checks =
        new CheckRound(
            bench,
            pan,
            settings.balance(),
            settings.weight(),
            rules(bench, methods, settings),
            listener);
    return new PostWeighRun(pan, ids, settings, record, checks, listener);
  }

  /** The balance rules of what is expected, else of all that waits to be weighed. */
  private static List<BalanceRule> rules(
      Bench bench, MethodBook methods, PostWeighSettings settings) {
    Stream<String> waiting =
        bench.register().list(About.FILTER, "", Status.DRYING.code()).stream()
            .map(row -> row.subject().id());
    return settings
        .expected()
        .map(Set::stream)
        .orElse(waiting)
        .flatMap(id -> Filters.find(bench.register(), id).stream())
        .map(FilterState::method)
        .distinct()
        .map(key -> methods.inForce(bench.register(), key).balance())
        .toList();
  }

  private PostWeighRun(
      PanWatch pan,
      Ids ids,
      PostWeighSettings settings,
      PostRecord record,
      CheckRound checks,
      Listener listener) {
    this.pan = pan;
    this.ids = ids;
    this.settings = settings;
    this.record = record;
    this.checks = checks;
    this.listener = listener;
  }

  /** Weighs until the scans end or a refusal stops it. */
  public PostWeighReport run() throws InterruptedException {
    Words stopped = checks.opening();
    if (stopped.isEmpty()) {
      stopped = checks.bracket();
    }
    while (stopped.isEmpty()) {
      Ids.Answer entered = next();
      if (entered.end()) {
        return report(checks.closing());
      }
      if (!entered.text().isBlank()) {
        stopped = turn(entered.text());
      }
      if (stopped.isEmpty()) {
        stopped = checks.bracket();
      }
    }
    return report(stopped);
  }

  private Ids.Answer next() throws InterruptedException {
    if (!pan.singly()) {
      pan.awaitEmpty(); // else the load itself asks for the empty pan, after the scan
    }
    ids.ask();
    return pan.idle(ids::poll);
  }

  private Words turn(String entered) throws InterruptedException {
    try {
      BagScan bag = bag(entered);
      Expected expected = record.admit(bag);
      if (!expected.hint().isEmpty()) {
        listener.hint(bag.filter().text(), expected.hint());
      }
      return weigh(bag, expected);
    } catch (Problem.Refused e) {
      return refuse(name(entered), e, null);
    }
  }

  /** The bag, which a dish alone does not name: whichever comes first, the other is asked for. */
  private BagScan bag(String entered) throws InterruptedException {
    Optional<String> inDish = inDish(entered);
    if (inDish.isPresent()) {
      return bagOf(entered.strip(), inDish.get());
    }
    BagScan bag = BagScan.of(entered);
    if (settings.both()) {
      requireDish(bag.filter().text(), record.admit(bag).stay().dish());
    }
    return bag;
  }

  private Optional<String> inDish(String entered) {
    return isBag(entered) ? Optional.empty() : record.dishes().filter(entered);
  }

  private static boolean isBag(String entered) {
    return Scan.of(entered).filterOrNull() != null;
  }

  private BagScan bagOf(String dish, String filter) throws InterruptedException {
    listener.askBag(filter, dish);
    Ids.Answer other = next();
    if (other.end()) {
      throw new Problem.Refused(PostWeighSays.DISH_ALONE, dish);
    }
    BagScan bag = BagScan.of(other.text());
    if (!bag.filter().text().equals(filter)) {
      throw new Problem.Refused(PostWeighSays.DISH_HOLDS, dish, filter, bag.filter());
    }
    return bag;
  }

  private void requireDish(String filter, String dish) throws InterruptedException {
    if (dish.isEmpty()) {
      return;
    }
    listener.askDish(filter, dish);
    Ids.Answer other = next();
    if (other.end()) {
      throw new Problem.Refused(PostWeighSays.BAG_ALONE, filter);
    }
    if (!other.text().strip().equalsIgnoreCase(dish)) {
      throw new Problem.Refused(PostWeighSays.DISH_OTHER, filter, dish, other.text().strip());
    }
  }

  private static String name(String entered) {
    try {
      return BagScan.of(entered).filter().text();
    } catch (Problem.Refused e) {
      String line = entered.strip();
      return line.length() > 40 ? line.substring(0, 40) + "…" : line;
    }
  }

  private Words weigh(BagScan bag, Expected expected) throws InterruptedException {
    String id = bag.filter().text();
    PanOutcome outcome = pan.weigh(load(id, expected));
    if (outcome instanceof PanOutcome.NotTaken no) {
      return refuse(id, no.words(), null);
    }
    Measured seen =
        Measured.observed((PanOutcome.Stable) outcome, settings.balance(), pan.formatName());
    try {
      PostWeighReport.Done done = record.record(bag, seen);
      weighings.add(done);
      checks.weighed();
      listener.accept(new WeighEvent.Recorded(done.entry(), seen));
      listener.recorded(done);
      return Words.none();
    } catch (Problem.Refused e) {
      Words stopped = refuse(id, e, seen);
      if (record.surprise().equals(id)) {
        listener.surprising(id);
      }
      return stopped;
    }
  }

  /** The person says that the surprising mass is right, and why: weigh it once more. */
  public void accept(String filter, String reason) {
    record.accept(filter, reason);
  }

  private static PanLoad load(String id, Expected expected) {
    String dish = expected.stay().dish();
    return PanLoad.OfFilter.in(id, dish);
  }

  private Words refuse(String filter, Words why, @Nullable Measured seen) {
    refused.add(new PostWeighReport.Refusal(filter, why.english()));
    listener.accept(new WeighEvent.Declined(filter, why, seen));
    return settings.goOn() ? Words.none() : Said.of(PostWeighSays.STOPPED);
  }

  /** True if a failed or missing check has stopped it. */
  public boolean stoppedByCheck() {
    return checks.hasStopped();
  }

  /** What is on the disk so far. */
  public PostWeighReport soFar() {
    return report(Words.none());
  }

  private PostWeighReport report(Words stopped) {
    return new PostWeighReport(weighings, refused, left(), stopped);
  }

  private List<String> left() {
    Set<String> left = new TreeSet<>(settings.expected().orElse(Set.of()));
    weighings.forEach(done -> left.remove(done.filter()));
    left.removeIf(id -> !record.isDue(id));
    return List.copyOf(left);
  }
}
