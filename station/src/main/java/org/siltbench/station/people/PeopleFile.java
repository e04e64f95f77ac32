package org.siltbench.station.people;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;
import org.siltbench.station.ledger.LabLock;
import org.siltbench.station.ledger.RealDisk;

/** The local file of people, for its owner only; changed under the lab's lock. */
final class PeopleFile {

  /**
   * One person on file.
   *
   * @param pin the hash of the PIN
   * @param badge the hash of the badge's text, or empty
   * @param failed wrong PINs since the last right one
   * @param failedAt the time of the last wrong one, milliseconds since 1970
   */
  record Kept(String initials, Right right, String pin, String badge, long failed, long failedAt) {

    Kept failed(long times, long at) {
      return new Kept(initials, right, pin, badge, times, at);
    }
  }

  /** A change of what is on file. */
  interface Change {
    void to(Map<String, Kept> people);
  }

  private final Path folder;
  private final Path file;

  PeopleFile(Path folder) {
    this.folder = folder;
    this.file = folder.resolve("people.json");
  }

  Map<String, Kept> read() {
    if (!Files.exists(file)) {
      return new TreeMap<>();
    }
    try {
      Map<String, Kept> people = new TreeMap<>();
      if (Json.object(Files.readAllBytes(file)).get("people") instanceof List<?> list) {
        for (Object item : list) {
          Kept kept = kept((Map<?, ?>) item);
          people.put(kept.initials(), kept);
        }
        return people;
      }
      throw damaged(null);
    } catch (NotJson | ClassCastException | IllegalArgumentException e) {
      throw damaged(e);
    } catch (IOException e) {
      throw outside(e);
    }
  }

  private Problem.Outside damaged(@org.jspecify.annotations.Nullable Exception e) {
    return new Problem.Outside(e, PeopleSays.FILE_DAMAGED, file);
  }

  private Problem.Outside outside(IOException e) {
    return new Problem.Outside(e, PeopleSays.FILE_UNUSABLE, file, Elsewhere.words(e));
  }

  private static Kept kept(Map<?, ?> item) {
    return new Kept(
        text(item, "initials"),
        Right.of(text(item, "right")),
        hash(text(item, "pin")),
        item.get("badge") instanceof String none && none.isEmpty() ? "" : hash(text(item, "badge")),
        number(item, "failed"),
        number(item, "failed_at"));
  }

  private static String text(Map<?, ?> item, String name) {
    if (item.get(name) instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException("no text in " + name);
  }

  private static String hash(String text) {
    if (PinHash.isSound(text)) {
      return text;
    }
    throw new IllegalArgumentException("a PIN's hash is damaged");
  }

  private static long number(Map<?, ?> item, String name) {
    if (item.get(name) instanceof Long number) {
      return number;
    }
    throw new IllegalArgumentException("no number in " + name);
  }

  void change(Change change) {
    try (LabLock lock = LabLock.of(folder);
        LabLock.Held held = lock.hold()) {
      Map<String, Kept> people = read();
      change.to(people);
      List<Object> list = new ArrayList<>();
      people.values().forEach(kept -> list.add(item(kept)));
      Map<String, Object> whole = new LinkedHashMap<>();
      whole.put("v", 1L);
      whole.put("people", list);
      new RealDisk().replace(file, (Json.write(whole) + '\n').getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw outside(e);
    }
  }

  private static Map<String, Object> item(Kept kept) {
    Map<String, Object> item = new LinkedHashMap<>();
    item.put("initials", kept.initials());
    item.put("right", kept.right().code());
    item.put("pin", kept.pin());
    item.put("badge", kept.badge());
    item.put("failed", kept.failed());
    item.put("failed_at", kept.failedAt());
    return item;
  }
}
