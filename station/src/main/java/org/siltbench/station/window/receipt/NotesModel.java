package org.siltbench.station.window.receipt;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.receipt.Box;
import org.siltbench.station.work.receipt.Condition;
import org.siltbench.station.work.receipt.ReceiptReader;
import org.siltbench.station.work.receipt.TypedNotes;

/** The field notes of one bag while they are typed. */
final class NotesModel {

  /** What stays in the form from one bag to the next. */
  private static final Set<String> STAYS = Set.of("site", "taken", "by", "rinse");

  private final Desk desk;
  private final Texts texts;
  private final Consumer<Box.Note> noted;
  private final Map<String, StringProperty> cells = new LinkedHashMap<>();
  private final ObservableList<Condition> conditions = FXCollections.observableArrayList();
  private final ObservableList<Box.Note> several = FXCollections.observableArrayList();
  private final StringProperty filter = new SimpleStringProperty("");
  final StringProperty day = new SimpleStringProperty("");

  NotesModel(Desk desk, Consumer<Box.Note> noted) {
    this.desk = desk;
    this.texts = desk.texts(NotesModel.class);
    this.noted = noted;
    for (String column : ReceiptReader.COLUMNS) {
      cells.put(column, new SimpleStringProperty(""));
    }
    day.set(LocalDate.now(desk.clock()).toString());
  }

  /** The bag, by its ID; empty if none was chosen. */
  StringProperty filter() {
    return filter;
  }

  /** What was typed into a column. */
  StringProperty cell(String column) {
    StringProperty cell = cells.get(column);
    if (cell == null) {
      throw new IllegalArgumentException("not a column of the receipt table: " + column);
    }
    return cell;
  }

  ObservableList<Condition> conditions() {
    return conditions;
  }

  /** The notes to choose from, where there are several for this bag. */
  ObservableList<Box.Note> several() {
    return several;
  }

  /** Marks a condition, or takes the mark away. */
  void mark(Condition condition) {
    if (!conditions.remove(condition)) {
      conditions.add(condition);
    }
  }

  void open(String id, List<Box.Note> notes) {
    filter.set(id);
    several.setAll(notes.size() > 1 ? notes : List.of());
    if (notes.isEmpty()) {
      cells.forEach(
          (column, cell) -> {
            if (!STAYS.contains(column)) {
              cell.set("");
            }
          });
      conditions.clear();
    } else {
      fill(notes.get(0).cells());
    }
  }

  private void fill(Map<String, String> noted) {
    cells.forEach((column, cell) -> cell.set(noted.getOrDefault(column, "")));
    conditions.clear();
    for (String word : noted.getOrDefault("condition", "").split("[+/]")) {
      Condition.of(word).ifPresent(conditions::add);
    }
  }

  private Map<String, String> typed() {
    Map<String, String> out = new LinkedHashMap<>();
    cells.forEach(
        (column, cell) -> {
          if (!cell.get().isBlank()) {
            out.put(column, cell.get().strip());
          }
        });
    out.remove("filter");
    Set<String> words = new LinkedHashSet<>();
    conditions.forEach(condition -> words.add(condition.code()));
    out.remove("condition");
    if (!words.isEmpty()) {
      out.put("condition", String.join("+", words));
    }
    return out;
  }

  /** Keeps what was typed with the bag; refused with the column's name if a cell makes no sense. */
  void keep() {
    String id = filter.get();
    desk.notices().clear(ReceiptModel.ABOUT);
    try {
      if (id.isEmpty()) {
        throw new Problem.WrongUse(texts.get("no.bag"), texts.get("no.bag.next"));
      }
      Map<String, String> notes = TypedNotes.on(day(), typed());
      TypedNotes.read(id, notes, desk.clock());
      noted.accept(new Box.Note(id, "", notes));
      filter.set("");
    } catch (Problem e) {
      desk.notices().show(ReceiptModel.ABOUT, e);
      desk.cues().give(Cues.Cue.REFUSED);
    }
  }

  private LocalDate day() {
    try {
      return LocalDate.parse(day.get().strip());
    } catch (DateTimeParseException e) {
      throw new Problem.WrongUse(texts.get("no.day", day.get()), texts.get("no.day.next"));
    }
  }
}
