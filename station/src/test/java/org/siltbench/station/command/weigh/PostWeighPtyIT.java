package org.siltbench.station.command.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.FastTime;

/** The whole life by commands, weighing at another process that writes into a pseudo-terminal. */
@Timeout(180)
class PostWeighPtyIT {

  private static final int FASTER = 10;

  @TempDir Path folder;
  private PtyFeed balance;
  private CommandLab lab;
  private List<String> ids;
  private final Map<String, String> loads = new HashMap<>();

  @BeforeEach
  void setUp() throws Exception {
    balance = new PtyFeed(folder.resolve("port"), 100 / FASTER, "0.00000 g");
    lab = new CommandLab(folder.resolve("lab"), new FastTime(FASTER));
    lab.ok("batch", "new", "--name", "A", "--lot", "L", "--method", "epa-160.2", "--count", "3");
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "1");
    ids = new ArrayList<>();
    ids.addAll(filters("A"));
    ids.addAll(filters("B"));
    lab.watching(this::hand);
    pre("A", "0.11234", "0.11300", "0.11250");
    pre("B", "0.11270");
  }

  @AfterEach
  void tearDown() throws Exception {
    balance.close();
  }

  private List<String> filters(String batch) throws Exception {
    lab.ok("batch", "list", "--batch", batch, "--json");
    List<String> out = new ArrayList<>();
    Map<?, ?> one = (Map<?, ?>) ((List<?>) Json.read(lab.out().strip())).get(0);
    for (Object filter : (List<?>) one.get("filters")) {
      out.add(String.valueOf(((Map<?, ?>) filter).get("filter")));
    }
    return out;
  }

  private static final class Json {
    static Object read(String text) throws Exception {
      return org.siltbench.station.json.Json.read(text);
    }
  }

  /** Does what a person at the bench does when asked. */
  private void hand(String line) {
    if (line.contains("\"event\":\"place\"")) {
      loads.forEach(
          (id, grams) -> {
            if (line.contains(id)) {
              balance.show(grams + " g");
            }
          });
    } else if (line.contains("\"event\":\"take-off\"")) {
      balance.show("0.00000 g");
    }
  }

  /** Clean masses written down by hand before: the balance is busy enough after the field. */
  private void pre(String batch, String... grams) throws Exception {
    List<String> filters = filters(batch);
    StringBuilder table = new StringBuilder("filter,mass_g,weighed\n");
    for (int i = 0; i < grams.length; i++) {
      table.append(filters.get(i)).append(',').append(grams[i]).append(",2026-01-05T10:00Z\n");
    }
    Path file = Files.writeString(folder.resolve(batch + ".csv"), table);
    lab.ok("preweigh", "--batch", batch, "--stated", file.toString(), "--balance", "B1");
  }

  private void receive() throws Exception {
    String notes =
        "filter,sample,site,collected,volume_ml,taken\n"
            + ids.get(0)
            + ",S1,upper,2026-02-01T10:00Z,500,aliquot\n"
            + ids.get(1)
            + ",S2,upper,2026-02-01T10:15Z,250,aliquot\n"
            + ids.get(3)
            + ",S3,upper,2026-02-01T10:30Z,250,aliquot\n";
    Path file = Files.writeString(folder.resolve("notes.csv"), notes);
    lab.ok("receive", "--from", file.toString());
  }

  private static String ago(int minutes) {
    return OffsetDateTime.ofInstant(Instant.now(), ZoneOffset.UTC).minusMinutes(minutes).toString();
  }

  private void dry(String... filters) {
    lab.ok(
        "dry",
        "start",
        "--filters",
        String.join(",", filters),
        "--number",
        "--temperature",
        "104",
        "--in",
        ago(200));
    lab.ok("dry", "end", "--temperature", "104", "--out", ago(60));
  }

  private int postweigh(String scans, String... more) {
    balance.show("0.00000 g");
    List<String> words =
        new ArrayList<>(List.of("postweigh", "--balance", balance.spec(), "--json", "--events"));
    words.addAll(List.of(more));
    return lab.input(scans).run(words.toArray(new String[0]));
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> list(String name) throws Exception {
    return (List<Map<String, Object>>) lab.document().get(name);
  }

  @Test
  void from_bags_to_results_with_the_displayed_digits() throws Exception {
    receive();
    dry(ids.get(0), ids.get(1));
    loads.put(ids.get(0), "0.12900");
    loads.put(ids.get(1), "0.13000");
    assertEquals(0, postweigh(ids.get(0) + "\n" + ids.get(1) + "\n", "--batch", "A"), lab::err);
    assertEquals("0.12900", list("weighings").get(0).get("mass_g"));
    assertEquals("not-tested", list("weighings").get(0).get("verdict"));
    dry(ids.get(0), ids.get(1));
    loads.put(ids.get(0), "0.12891");
    loads.put(ids.get(1), "0.12900");
    assertEquals(0, postweigh(ids.get(0) + "\n" + ids.get(1) + "\n", "--batch", "A"), lab::err);
    assertEquals("constant", list("weighings").get(0).get("verdict"));
    assertEquals("-0.00009", list("weighings").get(0).get("change_g"));
    assertEquals("dry-again", list("weighings").get(1).get("verdict"));
    lab.ok("results", "--batch", "A", "--json");
    Map<String, Object> first = list("rows").get(0);
    assertEquals(33.14, Double.parseDouble(first.get("conc_mg_l").toString()), 1e-9);
    assertEquals("yes", first.get("constant"));
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void a_wrong_bag_an_unknown_bag_and_a_second_scan_end_with_one_and_record_nothing()
      throws Exception {
    receive();
    dry(ids.get(0), ids.get(3));
    loads.put(ids.get(0), "0.12900");
    assertEquals(1, postweigh(ids.get(3) + "\n" + ids.get(0) + "\n", "--batch", "A"));
    assertTrue(list("refused").get(0).get("why").toString().contains("Wrong bag"));
    assertEquals(List.of(), list("weighings"));
    assertEquals(List.of(ids.get(0)), lab.document().get("not_read"));
    assertEquals(1, postweigh("K3DF0712R\n"));
    assertEquals(List.of(), list("weighings"));
    assertEquals(1, postweigh(ids.get(2) + "\n"));
    assertEquals(List.of(), list("weighings"));
    assertEquals(1, postweigh(ids.get(0) + "\n" + ids.get(0) + "\n"));
    assertEquals(1, list("weighings").size());
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void masses_are_keyed_in_twice_and_marked_for_good() throws Exception {
    receive();
    dry(ids.get(0), ids.get(1));
    String typed = ids.get(0) + " 0.12900 0.12900\n" + ids.get(1) + " 0.12900 0.12990\n";
    assertEquals(1, lab.input(typed).run("postweigh", "--keyed", "--balance", "B1", "--json"));
    assertEquals(1, list("weighings").size());
    assertTrue(list("refused").get(0).get("why").toString().contains("differ"));
    lab.ok("results", "--batch", "A", "--json");
    assertTrue(list("rows").get(0).get("flags").toString().contains("keyed"));
  }
}
