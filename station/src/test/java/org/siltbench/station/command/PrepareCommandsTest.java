package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.Scan;
import org.siltbench.station.json.Json;

/** From the lab folder to the bags on their way, by commands, at the practice balance. */
class PrepareCommandsTest {

  @TempDir Path folder;
  private CommandLab lab;

  @BeforeEach
  void setUp() {
    // With the code of the lab its practice masses are given: none agree by chance.
    lab = new CommandLab(folder.resolve("lab")).of(new Random(1));
    lab.ok("lab", "new", "--practice");
  }

  private void batch(int count) {
    lab.ok(
        "batch",
        "new",
        "--name",
        "B",
        "--lot",
        "L",
        "--method",
        "epa-160.2",
        "--count",
        Integer.toString(count));
  }

  private CommandLab preweigh(String... more) {
    String[] words = {"preweigh", "--batch", "B", "--balance", "practice?seed=5", "--json"};
    String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return lab.ok(all);
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> rows(String field) throws Exception {
    return (List<Map<String, Object>>) lab.document().get(field);
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> filters() throws Exception {
    lab.ok("batch", "list", "--json");
    List<Object> list = (List<Object>) Json.read(lab.out().strip());
    return (List<Map<String, Object>>) ((Map<String, Object>) list.get(0)).get("filters");
  }

  @Test
  void a_batch_lists_its_filters_with_role_and_status() throws Exception {
    lab.ok(
        "batch",
        "new",
        "--name",
        "B",
        "--lot",
        "L",
        "--method",
        "sm-2540d-22",
        "--count",
        "12",
        "--field-blanks",
        "2",
        "--spares",
        "1");
    List<Map<String, Object>> filters = filters();
    assertEquals(12, filters.size());
    Map<Object, Long> roles =
        filters.stream().collect(Collectors.groupingBy(f -> f.get("role"), Collectors.counting()));
    assertEquals(Map.of("sample", 9L, "field-blank", 2L, "spare", 1L), roles);
    assertTrue(filters.stream().allMatch(f -> f.get("status").equals("planned")));
    assertEquals(12, filters.stream().map(f -> f.get("filter")).distinct().count());
  }

  @Test
  void a_lot_that_was_not_dried_is_refused_before_the_first_load_until_it_is() throws Exception {
    lab.ok("lot", "new", "--name", "L", "--not-dried");
    batch(2);
    assertEquals(1, lab.run("preweigh", "--batch", "B", "--balance", "practice?seed=5", "--json"));
    assertEquals(List.of(), rows("weighings"));
    assertTrue(lab.err().contains("Lot L was not dried"), lab.err());
    String in = java.time.OffsetDateTime.now().minusHours(3).toString();
    String out = java.time.OffsetDateTime.now().minusHours(1).toString();
    lab.ok("dry", "start", "--batch", "B", "--purpose", "pre", "--temperature", "104", "--in", in);
    lab.ok("dry", "end", "--temperature", "104", "--out", out);
    preweigh();
    assertEquals(2, rows("weighings").size());
  }

  @Test
  void a_whole_batch_is_weighed_labelled_issued_and_taken_back() throws Exception {
    batch(12);
    preweigh("--repeat", "5", "--weight", "100mg");
    assertEquals(12, rows("weighings").size());
    assertEquals(2, rows("repeats").size());
    lab.ok("labels", "--batch", "B", "--out", folder.resolve("l.pdf").toString(), "--json");
    for (Map<String, Object> label : rows("labels")) {
      Scan scan = Scan.of((String) label.get("code"));
      BagCode code = ((Scan.Bag) scan).code();
      assertEquals(label.get("mass_g"), code.grams());
      assertEquals(label.get("filter"), code.filter().text());
      assertEquals(false, label.get("reprint"));
    }
    lab.ok("labels", "--batch", "B", "--out", folder.resolve("l2.pdf").toString(), "--json");
    assertTrue(rows("labels").stream().allMatch(l -> l.get("reprint").equals(true)));
    assertEquals(1, lab.run("labels", "--batch", "B", "--new", "--out", folder + "/l3.pdf"));
    Path csv = folder.resolve("f.csv");
    lab.ok("fieldsheet", "--batch", "B", "--out", folder + "/f.pdf", "--csv", csv.toString());
    List<String> lines = Files.readAllLines(csv);
    assertEquals(13, lines.size());
    assertTrue(lines.get(0).startsWith("filter,sample,role,pair,pair_kind,filter_order,site"));
    lab.ok("issue", "--batch", "B", "--trip", "Alder Fork 1", "--to", "RK");
    assertTrue(filters().stream().allMatch(f -> f.get("status").equals("issued")));
    lab.ok(
        "custody",
        "--trip",
        "Alder Fork 1",
        "--relinquished",
        "RK",
        "--received",
        "MB",
        "--bags",
        "12");
    assertEquals(1, lab.run("issue", "--batch", "B", "--trip", "Other", "--back"));
    lab.ok("issue", "--batch", "B", "--trip", "Alder Fork 1", "--back");
    assertTrue(filters().stream().allMatch(f -> f.get("status").equals("pre-weighed")));
  }

  @Test
  void an_audit_agrees_and_a_loose_filter_finds_its_id() throws Exception {
    batch(11);
    preweigh();
    String mass = (String) rows("weighings").get(4).get("mass_g");
    String filter = (String) rows("weighings").get(4).get("filter");
    lab.ok("audit", "--batch", "B", "--balance", "practice?seed=5", "--json");
    assertEquals(2, rows("audited").size());
    lab.ok("fit", "--batch", "B", "--mass", mass, "--json");
    assertEquals(filter, rows("fits").get(0).get("filter"));
    assertEquals(1, lab.run("fit", "--batch", "B", "--mass", "0.5"));
  }

  @Test
  void a_filter_of_another_seed_does_not_agree_with_its_bag() {
    batch(1);
    preweigh();
    assertEquals(1, lab.run("audit", "--batch", "B", "--balance", "practice?seed=6"));
    assertTrue(lab.out().contains("DIFFERS"), lab::out);
  }

  @Test
  void masses_are_keyed_in_twice_and_marked_for_good() throws Exception {
    batch(2);
    lab.input("0.12874\n0.12847\n0.12874\n0,12874\n0.1123\n0.1123\n");
    lab.ok("preweigh", "--batch", "B", "--balance", "old balance", "--keyed", "--json");
    assertEquals(
        List.of("0.12874", "0.1123"),
        rows("weighings").stream().map(w -> w.get("mass_g")).toList());
    assertTrue(lab.err().contains("The two differ"), lab::err);
    String ledger = ledger();
    assertTrue(ledger.contains("\"keyed\":true,\"observed\":false"), ledger);
  }

  @Test
  void handwritten_masses_are_taken_in_as_stated_all_or_none() throws Exception {
    batch(2);
    List<Object> ids = filters().stream().map(f -> f.get("filter")).toList();
    Path csv = folder.resolve("masses.csv");
    Files.writeString(
        csv,
        "filter,mass_g,weighed\n"
            + ids.get(0)
            + ",0.12874,2026-01-05T10:00Z\n"
            + ids.get(1)
            + ",x,2026-01-05T10:05Z\n");
    assertEquals(2, lab.run("preweigh", "--batch", "B", "--stated", csv.toString()));
    assertTrue(lab.err().contains("line 3"), lab::err);
    assertFalse(ledger().contains("\"kind\":\"weighing\""));
    Files.writeString(csv, "filter,mass_g,weighed\n" + ids.get(0) + ",0.12874,2026-01-05T10:00Z\n");
    lab.ok("preweigh", "--batch", "B", "--stated", csv.toString());
    assertTrue(ledger().contains("\"stated_at\":\"2026-01-05T10:00:00Z\""), ledger());
  }

  @Test
  void a_bag_is_scanned_closed_before_the_next_filter() throws Exception {
    batch(2);
    List<Object> ids = filters().stream().map(f -> f.get("filter")).toList();
    lab.input(ids.get(1) + "\nrubbish\n" + ids.get(0) + "\n" + ids.get(1) + "\n");
    preweigh("--scan");
    assertEquals(2, rows("weighings").size());
    assertTrue(lab.err().contains("That is the bag of " + ids.get(1)), lab::err);
    assertEquals(2, ledger().split("\"kind\":\"bag.closed\"").length - 1);
  }

  @Test
  void the_input_may_end_before_a_bag_is_closed_and_the_mass_is_kept() throws Exception {
    batch(2);
    lab.input("");
    assertEquals(
        1, lab.run("preweigh", "--batch", "B", "--balance", "practice?seed=5", "--json", "--scan"));
    assertEquals(1, rows("weighings").size());
  }

  @Test
  void the_practice_balance_is_refused_in_a_real_lab_and_told_how() {
    CommandLab real = new CommandLab(folder.resolve("real"));
    assertEquals(1, real.run("checkweight", "--balance", "practice", "--weight", "100mg"));
    assertTrue(real.err().contains("siltbench lab new --practice"), real::err);
    assertFalse(Files.exists(real.folder()));
  }

  @Test
  void a_check_weight_gives_the_keys_that_scripts_rely_on() throws Exception {
    lab.ok("weight", "--name", "W", "--nominal", "0.1", "--certified", "0.1000123", "--U", "0.016");
    lab.ok("checkweight", "--balance", "practice?seed=5", "--weight", "W", "--json");
    assertTrue(
        lab.document()
            .keySet()
            .containsAll(Set.of("nominal_g", "reading_g", "error_mg", "limit_mg", "pass")));
    assertEquals(true, lab.document().get("pass"));
    assertEquals(
        1,
        lab.run(
            "checkweight", "--balance", "practice?seed=5", "--weight", "W", "--limit", "0.0001"));
  }

  @Test
  void a_lot_is_tested_against_its_limit() {
    lab.ok("lot", "new", "--name", "L", "--diameter", "47", "--pore", "0.7", "--washed");
    lab.ok("lot", "test", "--lot", "L", "--losses", "0.05,-0.02,0.1");
    assertEquals(1, lab.run("lot", "test", "--lot", "L", "--losses", "0.05,0.4"));
    assertTrue(lab.out().contains("failed"), lab::out);
    assertEquals(1, lab.run("lot", "new", "--name", "L"));
    assertEquals(1, lab.run("lot", "test", "--lot", "other", "--losses", "0.1"));
  }

  @Test
  void bad_words_end_with_2_and_change_nothing() throws IOException {
    String before = ledger();
    List<String[]> bad =
        List.of(
            words("batch new --name B --lot L --method epa-160.3 --count 5"),
            words("batch new --name B --lot L --method epa-160.2 --count 0"),
            words("batch new --name B --lot L --method epa-160.2 --count 5000"),
            words("batch new --name B --lot L --method epa-160.2 --count 3 --spares 4"),
            words("batch new --name B --lot L --method epa-160.2 --count x"),
            words("checkweight --balance nonsense --weight 100mg"),
            words("checkweight --balance practice --weight nonsense"),
            words("checkweight --balance practice --weight 100mg --limit -1"),
            words("checkweight --balance practice --weight 100mg --phase noon"),
            words("room --temperature 500"),
            words("room"),
            words("room --temperature 20 --at yesterday"),
            words("room --temperature 20 --at 2999-01-01T00:00"),
            words("weight --name W --nominal 0.1 --certified 0.2 --U 0.1"),
            words("lot new --name L --diameter -47"),
            words("lot new --name L --window 0.2..0.1"),
            words("plan --every 0m --for 6h"),
            words("plan --every 15m --for 6h --expect a..b"),
            words("fit --batch B"),
            words("labels --batch B"),
            words("preweigh --batch B"));
    for (String[] one : bad) {
      assertEquals(2, lab.run(one), () -> String.join(" ", one) + "\n" + lab.err());
      assertFalse(lab.err().isBlank());
      assertEquals("", lab.out(), () -> String.join(" ", one));
    }
    assertEquals(before, ledger());
  }

  @Test
  void names_that_stand_already_are_refused_with_1() {
    batch(2);
    assertEquals(
        1,
        lab.run(
            "batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "2"));
    assertTrue(lab.err().contains("There is a batch B already."), lab::err);
    assertEquals(1, lab.run("preweigh", "--batch", "C", "--balance", "practice"));
    assertEquals(1, lab.run("lab", "new"));
  }

  private static String[] words(String line) {
    return line.split(" ");
  }

  private String ledger() throws IOException {
    StringBuilder all = new StringBuilder();
    try (var files = Files.list(lab.folder().resolve("ledger"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".jsonl")).toList()) {
        all.append(Files.readString(file));
      }
    }
    return all.toString();
  }
}
