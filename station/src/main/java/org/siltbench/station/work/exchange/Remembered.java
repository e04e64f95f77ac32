package org.siltbench.station.work.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/** The lab's memory of how files were read: {@code exchange/field-notes.json}. */
final class Remembered {

  private final Path file;

  Remembered(Path labFolder) {
    this.file = labFolder.resolve("exchange").resolve("field-notes.json");
  }

  /** What was settled for files of one kind, and when. */
  record Entry(String day, Answers answers) {}

  static String words(Answers answers) {
    return new TreeMap<>(answers.given())
        .entrySet().stream()
            .map(one -> one.getKey() + "=" + one.getValue())
            .collect(Collectors.joining(", "));
  }

  Optional<Entry> find(String signature) throws IOException {
    Object known = all().get(signature);
    if (!(known instanceof Map<?, ?> entry) || !(entry.get("answers") instanceof Map<?, ?> said)) {
      return Optional.empty();
    }
    Map<String, String> given = new LinkedHashMap<>();
    said.forEach((key, value) -> given.put(String.valueOf(key), String.valueOf(value)));
    return Optional.of(new Entry(String.valueOf(entry.get("day")), new Answers(given)));
  }

  private Map<String, @Nullable Object> all() throws IOException {
    if (!Files.exists(file)) {
      return new LinkedHashMap<>();
    }
    try {
      return Json.object(Files.readString(file, StandardCharsets.UTF_8));
    } catch (NotJson e) {
      throw new Problem.Outside(e, ExchangeSays.MEMORY_DAMAGED, file, Elsewhere.words(e));
    }
  }

  void keep(String signature, Answers answers, Clock clock) throws IOException {
    Map<String, @Nullable Object> all = all();
    Map<String, @Nullable Object> entry = new LinkedHashMap<>();
    entry.put("day", LocalDate.now(clock).toString());
    entry.put("answers", new TreeMap<>(answers.given()));
    all.put(signature, entry);
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path fresh = Files.createTempFile(folder, "field-notes", ".new");
    Files.writeString(fresh, Json.write(all) + "\n", StandardCharsets.UTF_8);
    Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }
}
