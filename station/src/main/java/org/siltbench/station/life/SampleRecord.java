package org.siltbench.station.life;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;

/**
 * What came back with a bag: one row of the receipt table.
 *
 * @param ref the ledger entry
 * @param filter the filter's ID
 * @param sample the sample number; several filters may carry one
 * @param role the role decided in the field, as a word
 * @param fields all columns of the row by their names
 */
public record SampleRecord(EntryRef ref, String filter, String sample, String role, Fields fields) {

  static SampleRecord of(Entry entry) {
    return of(entry.ref(), entry.data());
  }

  /** A record from the data of an entry. */
  public static SampleRecord of(EntryRef ref, Map<String, @Nullable Object> data) {
    Fields fields = Fields.of(data);
    return new SampleRecord(
        ref, fields.text("filter"), fields.text("sample"), fields.text("role"), fields);
  }

  /** A column's text; empty if it was not filled in. */
  public String text(String column) {
    return fields.text(column);
  }

  /** The filtered volume: the portions less what was left, or the stated volume. */
  public Optional<Volume> volume() {
    try {
      return portions().isEmpty() ? stated() : Optional.of(poured());
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private Optional<Volume> stated() {
    return fields.find("volume_ml").map(Volume::ofMillilitres);
  }

  private Volume poured() {
    Volume sum = Volume.ZERO;
    for (String portion : portions()) {
      sum = sum.plus(Volume.ofMillilitres(portion));
    }
    return fields.find("left_ml").map(Volume::ofMillilitres).map(sum::minus).orElse(sum);
  }

  /** The portions poured, mL, as written: separated by a plus sign. */
  public List<String> portions() {
    String text = fields.text("portions_ml").replace(" ", "");
    return text.isEmpty() ? List.of() : List.of(text.split("\\+"));
  }

  /** The place of this filter among those of its sample. */
  public int order() {
    return fields.whole("filter_order", 1);
  }
}
