package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Draft;

/** Makes and opens lab folders. */
public final class LabFolder {

  /** Letters and digits that common keyboard layouts do not move. */
  private static final String ALPHABET = "BCDEFGHJKLNPRSTUVX0123456789";

  private static final int LETTERS = 18;
  private static final Pattern CODE = Pattern.compile("[0-9A-Z]{4}");
  private static final String NAME_FILE = "lab.json";

  private LabFolder() {}

  /** True if the folder is a lab folder already. */
  public static boolean exists(Path folder) {
    return Files.exists(folder.resolve(NAME_FILE));
  }

  /**
   * Makes a new bench in a folder that is not a lab folder yet, and opens it.
   *
   * @param name what people call the bench
   * @param practice a lab for the practice balance only
   */
  public static OpenLab create(Path folder, String name, boolean practice, Setting setting) {
    if (exists(folder)) {
      throw new Problem.Refused(BenchSays.IS_LAB_ALREADY, folder);
    }
    return create(folder, name, practice, Optional.empty(), setting);
  }

  /**
   * Makes a new bench that goes on where another left off.
   *
   * @param origin the newest entry known of the other bench
   * @param source a folder with ledgers to copy, or empty where they will be fetched
   */
  public static OpenLab restore(
      Path folder,
      String name,
      boolean practice,
      Anchor origin,
      Optional<Path> source,
      Setting setting) {
    if (exists(folder)) {
      throw new Problem.Refused(BenchSays.RESTORE_INTO_LAB, folder);
    }
    try {
      setting.disk().makeFolder(folder);
      setting.disk().makeFolder(folder.resolve("ledger"));
      if (source.isPresent()) {
        LedgerCopy.all(source.get().resolve("ledger"), folder.resolve("ledger"), setting.disk());
      }
    } catch (IOException e) {
      throw DiskTrouble.opening(folder, e);
    }
    return create(folder, name, practice, Optional.of(origin), setting);
  }

  private static OpenLab create(
      Path folder, String name, boolean practice, Optional<Anchor> origin, Setting setting) {
    try {
      Disk disk = setting.disk();
      disk.makeFolder(folder);
      disk.makeFolder(folder.resolve("ledger"));
      disk.makeFolder(folder.resolve("register"));
      String code = freeCode(folder, setting);
      BenchKey key = BenchKey.make(folder, disk, setting.random());
      LocalBench bench = new LocalBench(folder, code, setting);
      bench.act(view -> List.of(created(name, practice, key, origin)));
      disk.replace(folder.resolve(NAME_FILE), identity(code));
      return bench;
    } catch (IOException e) {
      throw DiskTrouble.opening(folder, e);
    }
  }

  /** Opens a lab folder. */
  public static OpenLab open(Path folder, Setting setting) {
    if (!exists(folder)) {
      throw new Problem.WrongUse(BenchSays.NO_LAB, folder);
    }
    try {
      return new LocalBench(folder, readCode(folder), setting);
    } catch (IOException e) {
      throw DiskTrouble.opening(folder, e);
    }
  }

  private static Draft created(
      String name, boolean practice, BenchKey key, Optional<Anchor> origin) {
    Map<String, @Nullable Object> data = new LinkedHashMap<>();
    data.put("name", name);
    data.put("practice", practice);
    data.put("format_of_ids", 1L);
    data.put("key", key.open());
    if (origin.isPresent()) {
      Map<String, @Nullable Object> from = new LinkedHashMap<>();
      from.put("bench", origin.get().bench());
      from.put("seq", origin.get().seq());
      from.put("head", origin.get().head());
      data.put("restored_from", from);
    }
    return new Draft("bench.created", 1, true, data);
  }

  private static byte[] identity(String code) {
    Map<String, Object> identity = new LinkedHashMap<>();
    identity.put("v", 1L);
    identity.put("bench", code);
    return (Json.write(identity) + '\n').getBytes(StandardCharsets.UTF_8);
  }

  /** The code of the bench whose folder this is. */
  public static String readCode(Path folder) throws IOException {
    try {
      Object code = Json.object(Files.readAllBytes(folder.resolve(NAME_FILE))).get("bench");
      if (code instanceof String text && CODE.matcher(text).matches()) {
        return text;
      }
      throw new IOException("the file " + NAME_FILE + " names no bench");
    } catch (NotJson e) {
      throw new IOException("the file " + NAME_FILE + " is damaged: " + e.getMessage(), e);
    }
  }

  private static String freeCode(Path folder, Setting setting) throws IOException {
    List<String> taken = setting.disk().names(folder.resolve("ledger"));
    String code = code(setting);
    while (taken.contains(code + ".jsonl")) {
      code = code(setting);
    }
    return code;
  }

  private static String code(Setting setting) {
    StringBuilder code = new StringBuilder();
    code.append(ALPHABET.charAt(setting.random().nextInt(LETTERS)));
    while (code.length() < 4) {
      code.append(ALPHABET.charAt(setting.random().nextInt(ALPHABET.length())));
    }
    return code.toString();
  }
}
