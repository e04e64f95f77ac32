package org.siltbench.station.work.results;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Turns a tree with binary numbers into one that the JSON writer takes. */
final class Plain {

  private Plain() {}

  static @Nullable Object tree(@Nullable Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<String, @Nullable Object> out = new LinkedHashMap<>();
      map.forEach((name, member) -> out.put(String.valueOf(name), tree(member)));
      return out;
    }
    if (value instanceof List<?> list) {
      List<@Nullable Object> out = new ArrayList<>();
      list.forEach(item -> out.add(tree(item)));
      return out;
    }
    if (value instanceof Double number) {
      return Double.isFinite(number) ? new BigDecimal(Double.toString(number)) : null;
    }
    return value;
  }
}
