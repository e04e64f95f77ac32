package org.siltbench.station.life;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.ledger.Entry;

/**
 * Reads the data of an entry by name. What is not there or does not have the asked form is absent:
 * a fold never fails on a line that another program version wrote; the rules that write are strict.
 */
public final class Fields {

  private final Map<String, @Nullable Object> data;

  private Fields(Map<String, @Nullable Object> data) {
    this.data = data;
  }

  public static Fields of(Entry entry) {
    return new Fields(entry.data());
  }

  public static Fields of(Map<String, @Nullable Object> data) {
    return new Fields(data);
  }

  /** The text of a field; empty if it is not there. */
  public String text(String name) {
    Object value = data.get(name);
    return value == null || value instanceof List || value instanceof Map ? "" : value.toString();
  }

  public Optional<String> find(String name) {
    String text = text(name);
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  public Optional<Mass> mass(String name) {
    try {
      return find(name).map(Mass::ofGrams);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  public Optional<BigDecimal> decimal(String name) {
    try {
      return find(name).map(BigDecimal::new);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  public double number(String name, double otherwise) {
    return decimal(name).map(BigDecimal::doubleValue).orElse(otherwise);
  }

  public int whole(String name, int otherwise) {
    try {
      return find(name).map(Integer::valueOf).orElse(otherwise);
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }

  public boolean flag(String name) {
    return text(name).equals("true");
  }

  public Optional<OffsetDateTime> time(String name) {
    try {
      return find(name).map(OffsetDateTime::parse);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** The texts of a list; a list of objects gives nothing. */
  public List<String> texts(String name) {
    List<String> out = new ArrayList<>();
    if (data.get(name) instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof String text) {
          out.add(text);
        }
      }
    }
    return out;
  }

  /** The objects of a list; a list of texts gives nothing. */
  public List<Fields> rows(String name) {
    List<Fields> out = new ArrayList<>();
    if (data.get(name) instanceof List<?> list) {
      list.forEach(item -> asObject(item).ifPresent(out::add));
    }
    return out;
  }

  /** An object within. */
  public Optional<Fields> object(String name) {
    return asObject(data.get(name));
  }

  /** The filter IDs of a list that holds either texts or objects with a field {@code filter}. */
  public List<String> filters(String name) {
    List<String> out = texts(name);
    rows(name).forEach(row -> row.find("filter").ifPresent(out::add));
    return out;
  }

  public Map<String, @Nullable Object> all() {
    return data;
  }

  @SuppressWarnings("unchecked") // keys of a JSON object are always texts
  private static Optional<Fields> asObject(@Nullable Object item) {
    return item instanceof Map<?, ?> map
        ? Optional.of(new Fields((Map<String, @Nullable Object>) map))
        : Optional.empty();
  }
}
