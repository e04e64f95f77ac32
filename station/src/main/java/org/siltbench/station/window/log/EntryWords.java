package org.siltbench.station.window.log;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.siltbench.station.life.Fields;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.log.EntryList;
import org.siltbench.station.work.paper.InPrint;

/** Entries in a line: what kind, and what of it tells them apart. */
final class EntryWords {

  private static final Set<String> KINDS =
      Set.of(
          "weighing",
          "sample.received",
          "dry.started",
          "dry.ended",
          "label.printed",
          "bag.closed",
          "bag.missing",
          "batch.created",
          "batch.issued",
          "batch.returned",
          "hold",
          "release",
          "corrected",
          "swapped",
          "filter.rejected",
          "check.weighed",
          "custody",
          "lot.created",
          "lot.tested");

  /** What a summary shows of each kind, in order. */
  private static final Map<String, List<String>> SHOWN =
      Map.of(
          "weighing", List.of("filter", "status", "mass_g"),
          "sample.received", List.of("filter", "sample", "site", "volume_ml", "portions_ml"),
          "label.printed", List.of("filter", "mass_g", "revision"),
          "dry.started", List.of("cycle", "purpose", "temperature_c"),
          "dry.ended", List.of("cycle", "temperature_c"),
          "batch.issued", List.of("trip", "to"),
          "batch.returned", List.of("trip"),
          "batch.created", List.of("name", "method"),
          "filter.rejected", List.of("filter", "reason"),
          "hold", List.of("reason"));

  private final Texts texts;

  EntryWords(Texts texts) {
    this.texts = texts;
  }

  /** A field of an entry; its stable name where there is no word for it. */
  String field(String name) {
    return texts.has("field." + name) ? texts.get("field." + name) : name;
  }

  String kind(String kind) {
    return KINDS.contains(kind) ? texts.get("kind." + kind.replace('.', '-')) : kind;
  }

  String summary(EntryList.Shown shown) {
    Fields data = Fields.of(shown.entry());
    if (shown.entry().kind().equals("corrected")) {
      return correction(data);
    }
    if (shown.entry().kind().equals("swapped")) {
      return data.texts("filters").stream().map(InPrint::id).collect(Collectors.joining(" ⇄ "))
          + ", "
          + data.text("reason");
    }
    List<String> names =
        Objects.requireNonNullElse(
            SHOWN.get(shown.entry().kind()), List.of("filter", "weight", "trip", "reason"));
    Stream<String> words = names.stream().map(name -> word(name, data.text(name)));
    return words.filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
  }

  private String correction(Fields data) {
    String target = data.object("entry").map(e -> e.text("bench") + '/' + e.text("seq")).orElse("");
    String set =
        data.object("set")
            .map(s -> s.all().keySet().stream().map(this::field).collect(Collectors.joining(", ")))
            .orElse("");
    return target + ": " + set + ", " + data.text("reason");
  }

  private static String word(String name, String value) {
    if (value.isEmpty()) {
      return "";
    }
    return switch (name) {
      case "filter" -> InPrint.id(value);
      case "mass_g" -> value + " g";
      case "volume_ml", "portions_ml" -> value + " mL";
      case "temperature_c" -> value + " °C";
      default -> value;
    };
  }
}
