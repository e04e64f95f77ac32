package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;
import org.siltbench.station.ledger.Disk;

/** The anchors a lab folder remembers, one JSON object a line in {@code anchors.jsonl}. */
final class AnchorBook {

  private static final String FILE = "anchors.jsonl";
  private static final Pattern HEAD = Pattern.compile("[0-9a-f]{64}");

  private AnchorBook() {}

  static void add(Disk disk, Path folder, Anchor anchor) throws IOException {
    byte[] line = (Json.write(anchor.json()) + '\n').getBytes(StandardCharsets.UTF_8);
    try (Disk.File file = disk.open(folder.resolve(FILE))) {
      file.writeAll(line, file.size());
      file.force();
    }
  }

  /** Reads what can be read; a line that cannot is passed to the list of the unread. */
  static List<Anchor> read(Path folder, List<String> unread) throws IOException {
    Path path = folder.resolve(FILE);
    List<Anchor> anchors = new ArrayList<>();
    if (!Files.exists(path)) {
      return anchors;
    }
    for (String line : Files.readString(path).split("\n")) {
      try {
        Anchor anchor = Anchor.of(Json.object(line));
        if (HEAD.matcher(anchor.head()).matches()) {
          anchors.add(anchor);
        } else {
          unread.add(line);
        }
      } catch (NotJson e) {
        unread.add(line);
      }
    }
    return anchors;
  }
}
