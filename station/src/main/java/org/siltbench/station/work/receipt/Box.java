package org.siltbench.station.work.receipt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.receipt.Reconciliation.Accepted;
import org.siltbench.station.work.receipt.Reconciliation.Kind;
import org.siltbench.station.work.receipt.Reconciliation.Refused;

/**
 * A box of returned bags while somebody goes through it: bags scanned, notes typed or read from a
 * file. Nothing of it is recorded until it is taken in.
 *
 * @param scanned bags in the box: the ID, and what was scanned
 * @param notes the notes so far, in the order they came
 * @param unused filters that a table names with nothing beside them
 */
public record Box(Map<String, String> scanned, List<Note> notes, Set<String> unused) {

  /** Nothing scanned, nothing noted. */
  public static final Box EMPTY = new Box(Map.of(), List.of(), Set.of());

  /**
   * The notes for one bag.
   *
   * @param filter its ID
   * @param source where they come from: a file and its line, or empty where they were typed
   * @param cells columns of the receipt table
   */
  public record Note(String filter, String source, Map<String, String> cells) {}

  /** Where a bag of the box stands. */
  public enum Standing {
    /** Bag and notes fit. */
    FITS,
    /** They fit, and there is something to know. */
    LOOK,
    /** The result will be kept back. */
    HELD,
    NO_NOTES,
    NO_BAG,
    TWO_NOTES,
    REFUSED,
    /** It was taken in before, word for word. */
    ALREADY,
    UNUSED,
    /** Out on the same trip, and neither scanned nor noted. */
    MISSING
  }

  /**
   * A bag as the box shows it.
   *
   * @param filter its ID
   * @param state what is known of it; empty if no batch has it
   * @param scanned whether it is in the box
   * @param notes its notes
   * @param standing where it stands
   * @param said what is to be said about it, in sentences
   */
  public record Bag(
      String filter,
      Optional<FilterState> state,
      boolean scanned,
      List<Note> notes,
      Standing standing,
      List<Words> said) {}

  /** The box, gone through. */
  public record Seen(List<Bag> bags, Reconciliation found) {

    /** How many bags stand like this. */
    public long count(Standing standing) {
      return bags.stream().filter(bag -> bag.standing() == standing).count();
    }
  }

  /** Keeps the order. */
  public Box {
    scanned = new LinkedHashMap<>(scanned);
    notes = List.copyOf(notes);
    unused = new LinkedHashSet<>(unused);
  }

  /** With one more bag. */
  public Box with(String filter, String entered) {
    Map<String, String> all = new LinkedHashMap<>(scanned);
    all.put(filter, entered);
    return new Box(all, notes, unused);
  }

  /** With these notes in place of all that were typed for the bag. */
  public Box with(Note note) {
    List<Note> all = new ArrayList<>(notes);
    all.removeIf(old -> old.filter().equals(note.filter()) && old.source().equals(note.source()));
    all.add(note);
    return new Box(scanned, all, unused);
  }

  /** With one of several notes for a bag, and no other. */
  public Box only(Note note) {
    List<Note> all = new ArrayList<>(notes);
    all.removeIf(old -> old.filter().equals(note.filter()) && !old.equals(note));
    return new Box(scanned, all, unused);
  }

  /** With filters that stayed unused. */
  public Box unused(List<String> more) {
    Set<String> all = new LinkedHashSet<>(unused);
    all.addAll(more);
    return new Box(scanned, notes, all);
  }

  /** Without these bags and what was noted for them. */
  public Box without(Set<String> filters) {
    Map<String, String> bags = new LinkedHashMap<>(scanned);
    bags.keySet().removeAll(filters);
    Set<String> rest = new LinkedHashSet<>(unused);
    rest.removeAll(filters);
    return new Box(
        bags, notes.stream().filter(note -> !filters.contains(note.filter())).toList(), rest);
  }

  /** Goes through it; records nothing. */
  public Seen look(Bench bench) {
    Read read = read(bench);
    Reconciliation found = new Receipt(bench).look(read.table(), options(false, false));
    return new Seen(new Standings(bench.register(), this, found, read.wrong()).bags(), found);
  }

  /**
   * Takes in what fits.
   *
   * @param goOn although others do not
   * @param markMissing and records those that have not come back as missing
   * @throws Problem.Refused if one line is refused and it is not to go on
   */
  public Reconciliation.Done take(Bench bench, boolean goOn, boolean markMissing) {
    Read read = read(bench);
    if (!goOn) {
      for (Map.Entry<String, Problem> one : read.wrong().entrySet()) {
        throw new Problem.Refused(ReceiptSays.BAG_NOTES, one.getKey(), one.getValue().happened());
      }
    }
    Reconciliation.Done done = new Receipt(bench).take(read.table(), options(goOn, markMissing));
    if (done.written().isEmpty() && !done.found().refused().isEmpty()) {
      Refused first = done.found().refused().get(0);
      throw new Problem.Refused(ReceiptSays.BAG, first.filter(), first.words());
    }
    return done;
  }

  /** A bag once scanned, every bag in the box must be scanned; else the notes alone count. */
  private Receipt.Options options(boolean goOn, boolean markMissing) {
    Optional<Set<String>> bags =
        scanned.isEmpty() ? Optional.empty() : Optional.of(scanned.keySet());
    return new Receipt.Options(bags, goOn, markMissing);
  }

  private record Read(ReceiptTable table, Map<String, Problem> wrong) {}

  private Read read(Bench bench) {
    List<ReceiptRow> rows = new ArrayList<>();
    Set<String> blank = new LinkedHashSet<>(unused);
    Map<String, Problem> wrong = new HashMap<>();
    for (Note note : notes) {
      String entered = scanned.getOrDefault(note.filter(), note.filter());
      try {
        ReceiptTable one = TypedNotes.read(entered, note.cells(), bench.clock());
        rows.addAll(one.rows());
        blank.addAll(one.unused());
      } catch (Problem e) {
        wrong.put(note.filter(), e);
      }
    }
    return new Read(new ReceiptTable(rows, List.copyOf(blank)), wrong);
  }

  /** What stands for a bag, from what was found of all. */
  private record Standings(
      RegisterView register, Box box, Reconciliation found, Map<String, Problem> wrong) {

    List<Bag> bags() {
      Set<String> ids = new LinkedHashSet<>(box.scanned.keySet());
      box.notes.forEach(note -> ids.add(note.filter()));
      ids.addAll(box.unused);
      ids.addAll(found.missing());
      return ids.stream().map(this::bag).toList();
    }

    private Bag bag(String id) {
      List<Note> own = box.notes.stream().filter(note -> note.filter().equals(id)).toList();
      List<Words> said = new ArrayList<>();
      Standing standing = standing(id, said);
      return new Bag(
          id, Filters.find(register, id), box.scanned.containsKey(id), own, standing, said);
    }

    private Standing standing(String id, List<Words> said) {
      Problem problem = wrong.get(id);
      if (problem != null) {
        said.add(problem.happened());
        return Standing.REFUSED;
      }
      for (Refused no : found.refused()) {
        if (no.filter().equals(id)) {
          said.add(no.words());
          return of(no.kind());
        }
      }
      for (Accepted yes : found.accepted()) {
        if (yes.row().filter().equals(id)) {
          return accepted(yes, said);
        }
      }
      if (found.already().contains(id)) {
        return Standing.ALREADY;
      }
      if (found.missing().contains(id)) {
        return Standing.MISSING;
      }
      return found.unused().contains(id) ? Standing.UNUSED : Standing.NO_NOTES;
    }

    private static Standing of(Kind kind) {
      return switch (kind) {
        case NOTES_WITHOUT_BAG -> Standing.NO_BAG;
        case TWO_NOTES -> Standing.TWO_NOTES;
        case UNKNOWN, STATUS, BAG_MASS -> Standing.REFUSED;
      };
    }

    private Standing accepted(Accepted yes, List<Words> said) {
      String id = yes.row().filter();
      found.warnings().stream()
          .filter(warning -> warning.what().english().contains(id))
          .map(Reconciliation.Warning::what)
          .forEach(said::add);
      boolean held =
          yes.row().conditions().stream()
              .anyMatch(c -> c.consequence() == Condition.Consequence.HOLD);
      if (held) {
        return Standing.HELD;
      }
      return said.isEmpty() ? Standing.FITS : Standing.LOOK;
    }
  }
}
