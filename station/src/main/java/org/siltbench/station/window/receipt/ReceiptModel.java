package org.siltbench.station.window.receipt;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.calc.id.BagCode;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.issue.Issue;
import org.siltbench.station.work.receipt.Box;
import org.siltbench.station.work.receipt.Reconciliation;
import org.siltbench.station.work.receipt.TypedNotes;
import org.siltbench.station.work.scan.BagScan;

/** The box of returned bags that is gone through. */
final class ReceiptModel implements ScanTaker {

  static final String ABOUT = "receipt";

  private final Desk desk;
  private final Texts texts;
  private final ObservableList<Box.Bag> bags = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<Box.Seen>> seen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<String> chosen = new ReadOnlyObjectWrapper<>("");
  private final NotesModel notes;
  private final ImportModel imports;
  private final CustodyModel custody;
  private Box box = Box.EMPTY;
  final BooleanProperty goOn = new SimpleBooleanProperty();
  final BooleanProperty markMissing = new SimpleBooleanProperty();

  ReceiptModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(ReceiptModel.class);
    this.notes = new NotesModel(desk, this::noted);
    this.imports = new ImportModel(desk, this::imported);
    this.custody = new CustodyModel(desk);
    desk.changesInFront("receipt", this::refresh);
  }

  ObservableList<Box.Bag> bags() {
    return bags;
  }

  /** The box as it stands; empty before the first look. */
  ReadOnlyObjectProperty<Optional<Box.Seen>> seen() {
    return seen.getReadOnlyProperty();
  }

  /** The bag whose notes are in front, by its ID. */
  ReadOnlyObjectProperty<String> chosen() {
    return chosen.getReadOnlyProperty();
  }

  NotesModel notes() {
    return notes;
  }

  ImportModel imports() {
    return imports;
  }

  CustodyModel custody() {
    return custody;
  }

  /** Looks again; other benches and screens may have recorded something. */
  void refresh() {
    Box now = box;
    desk.work().run(() -> now.look(desk.lab()), this::show);
    custody.refresh();
  }

  private void show(Box.Seen found) {
    seen.set(Optional.of(found));
    bags.setAll(found.bags());
    custody.counted(box.scanned().size());
  }

  @Override
  public boolean scanned(BagScan bag) {
    String id = bag.filter().text();
    String entered = bag.code().map(BagCode::text).orElse(id);
    boolean again = box.scanned().containsKey(id);
    desk.work()
        .run(
            () -> bag.compare(Filters.require(desk.lab().register(), id)),
            hint -> {
              desk.notices().clear(ABOUT);
              if (again) {
                desk.notices().show(Notice.note(ABOUT, texts.get("again", id)));
              } else if (!hint.isEmpty()) {
                desk.notices().show(Notice.note(ABOUT, texts.say(hint)));
              }
              box = box.with(id, entered);
              choose(id);
              refresh();
            },
            this::refuse);
    return true;
  }

  private void refuse(Problem problem) {
    desk.notices().show(ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }

  /** Brings a bag's notes in front. */
  void choose(String filter) {
    chosen.set(filter);
    notes.open(filter, of(filter));
  }

  private List<Box.Note> of(String filter) {
    return box.notes().stream().filter(note -> note.filter().equals(filter)).toList();
  }

  private void noted(Box.Note note) {
    box = box.with(note);
    desk.notices().clear(ABOUT);
    refresh();
  }

  private void imported(ImportModel.Taken taken) {
    for (Box.Note note : taken.notes()) {
      box = box.with(note);
    }
    box = box.unused(taken.unused());
    refresh();
  }

  /** Nobody wrote anything for this bag. */
  void withoutNotes(String filter) {
    noted(new Box.Note(filter, "", TypedNotes.NONE));
    choose(filter);
  }

  /** One of several notes counts. */
  void keep(Box.Note note) {
    box = box.only(note);
    choose(note.filter());
    refresh();
  }

  /** The bag is in the box although its code could not be scanned. */
  void isHere(String filter) {
    box = box.with(filter, filter);
    refresh();
  }

  /** Takes a bag off the list. */
  void drop(String filter) {
    box = box.without(Set.of(filter));
    chosen.set("");
    refresh();
  }

  /** The filter was never used: back to stock. */
  void backToStock(String filter) {
    desk.work().run(() -> back(filter), done -> returned(filter), this::refuse);
  }

  private String back(String filter) {
    FilterState state = Filters.require(desk.lab().register(), filter);
    BatchState batch = Batches.require(desk.lab().register(), state.batch());
    new Issue(desk.lab(), batch, state.trip()).back(List.of(filter));
    return filter;
  }

  private void returned(String filter) {
    desk.notices().show(Notice.note(ABOUT, texts.get("returned", filter)));
    desk.cues().give(Cues.Cue.RECORDED);
    box = box.without(Set.of(filter));
    chosen.set("");
    desk.changed();
  }

  /** Takes the box in. */
  void take() {
    Box now = box;
    boolean others = goOn.get();
    boolean missing = markMissing.get();
    desk.notices().clear(ABOUT);
    desk.work().run(() -> now.take(desk.lab(), others, missing), this::taken, this::refuse);
  }

  private void taken(Reconciliation.Done done) {
    Set<String> in = new LinkedHashSet<>();
    done.found().accepted().forEach(one -> in.add(one.row().filter()));
    in.addAll(done.found().already());
    box = box.without(in);
    chosen.set("");
    markMissing.set(false);
    goOn.set(false);
    imports.remember();
    int bags = done.found().accepted().size();
    if (done.written().isEmpty()) {
      desk.notices().show(Notice.note(ABOUT, texts.get("nothing.new")));
    } else {
      desk.notices().show(Notice.note(ABOUT, texts.get("taken.in", bags)));
      desk.cues().give(Cues.Cue.RECORDED);
    }
    desk.changed();
  }
}
