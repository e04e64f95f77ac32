package org.siltbench.station.command;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes what a command says as one line of JSON; numbers that are none become null. */
final class Json {

  private Json() {}

  static String line(@Nullable Object tree) {
    return org.siltbench.station.json.Json.write(plain(tree));
  }

  private static @Nullable Object plain(@Nullable Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<String, @Nullable Object> out = new LinkedHashMap<>();
      map.forEach((name, member) -> out.put(String.valueOf(name), plain(member)));
      return out;
    }
    if (value instanceof Iterable<?> list) {
      List<@Nullable Object> out = new ArrayList<>();
      list.forEach(member -> out.add(plain(member)));
      return out;
    }
    if (value instanceof Double || value instanceof Float) {
      double number = ((Number) value).doubleValue();
      return Double.isFinite(number) ? BigDecimal.valueOf(number) : null;
    }
    if (value == null || value instanceof Boolean || value instanceof Number) {
      return value;
    }
    return value.toString();
  }
}
