package org.siltbench.station.window.day;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.PracticeProcess;
import org.siltbench.station.json.Json;
import org.siltbench.station.window.BenchTime;

/** The day, command by command. */
final class DayByCommand {

  private final BenchTime time = new BenchTime(Plan.FASTER);
  private final CommandLab lab;
  private final Path port;
  private final PracticeProcess balance;
  private Plan plan = new Plan(List.of());
  private Plan.Round round = Plan.Round.CLEAN;
  private List<String> ids = List.of();

  DayByCommand(Path folder, Path port, PracticeProcess balance) {
    this.lab = new CommandLab(folder, time).at(time.clock()).watching(this::hand);
    this.port = port;
    this.balance = balance;
  }

  /** The hand does what the screen says. */
  private void hand(String message) {
    if (message.startsWith("Place ")) {
      balance.act("put " + plan.grams(message, round));
    } else if (message.startsWith("Take it off")) {
      balance.act("off");
    }
  }

  private void ok(String... words) {
    lab.ok(words);
  }

  void run() throws Exception {
    describe();
    morning();
    balance.awaitPort();
    ok("checkweight", "--balance", spec(), "--weight", Plan.WEIGHT);
    balance.act("off");
    batch();
    weigh("preweigh", "--batch", Plan.BATCH);
    papers();
    time.pass(Plan.TRIP_TIME);
    receive();
    dry(Plan.Round.FIRST);
    dry(Plan.Round.SECOND);
    evening();
  }

  private void describe() {
    ok(
        "balance",
        "describe",
        "--name",
        Plan.BALANCE,
        "--balance",
        spec(),
        "--serial",
        "SN 2217",
        "--resolution",
        "0.00001",
        "--capacity",
        "60");
  }

  private String spec() {
    return "serial:" + port;
  }

  private void morning() {
    ok(
        "weight",
        "--name",
        Plan.WEIGHT,
        "--nominal",
        "0.1",
        "--certified",
        "0.100003",
        "--U",
        "0.006");
    ok("room", "--temperature", "21.4", "--humidity", "46");
  }

  private void batch() throws Exception {
    ok(
        "plan",
        "--every",
        Plan.EVERY,
        "--for",
        Plan.LENGTH,
        "--field-blank-pct",
        "0",
        "--duplicate-pct",
        "0",
        "--spare-pct",
        "0",
        "--controls",
        "0",
        "--json");
    String counts = String.valueOf(lab.document().get("batch_new")).strip();
    List<String> words =
        new ArrayList<>(
            List.of("batch", "new", "--name", Plan.BATCH, "--lot", "GF-12", "--method"));
    words.add(Plan.METHOD);
    words.addAll(Arrays.asList(counts.split(" ")));
    ok(words.toArray(new String[0]));
    ok("batch", "list", "--json");
    Map<?, ?> one = (Map<?, ?>) ((List<?>) Json.read(lab.out().strip())).get(0);
    ids =
        ((List<?>) one.get("filters"))
            .stream().map(filter -> String.valueOf(((Map<?, ?>) filter).get("filter"))).toList();
    plan = new Plan(ids);
  }

  private void weigh(String... words) {
    balance.awaitPort();
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--balance", spec(), "--weight", Plan.WEIGHT));
    ok(all.toArray(new String[0]));
    balance.act("off");
  }

  private void papers() {
    Path folder = lab.folder();
    ok(
        "labels",
        "--batch",
        Plan.BATCH,
        "--media",
        "roll-50x25",
        "--out",
        folder.resolve("labels.pdf").toString());
    ok(
        "fieldsheet",
        "--batch",
        Plan.BATCH,
        "--out",
        folder.resolve("sheet.pdf").toString(),
        "--csv",
        folder.resolve("sheet.csv").toString());
    ok("issue", "--batch", Plan.BATCH, "--trip", Plan.TRIP, "--to", "CD");
  }

  private void receive() throws Exception {
    List<String> lines = new ArrayList<>(List.of("filter,sample,site,collected,volume_ml,taken"));
    List<String> back = Plan.returned(ids);
    for (int i = 0; i < back.size(); i++) {
      String at = "2026-05-28T" + Plan.collected(i) + "Z";
      lines.add(back.get(i) + ",AF-" + (i + 1) + ",footbridge," + at + ",250,aliquot");
    }
    Path notes = Files.write(lab.folder().resolve("notes.csv"), lines);
    Path box = Files.write(lab.folder().resolve("box.txt"), back);
    ok("receive", "--from", notes.toString(), "--scans", box.toString());
  }

  private void dry(Plan.Round next) {
    List<String> dishes = new ArrayList<>();
    ids.forEach(id -> dishes.add(id + "=" + (dishes.size() + 1)));
    String all = String.join(",", dishes);
    ok("dry", "start", "--filters", all, "--temperature", "104", "--thermometer", "T1");
    time.pass(Plan.OVEN);
    ok("dry", "end", "--temperature", "104", "--thermometer", "T1");
    time.pass(Plan.DESICCATOR);
    round = next;
    lab.input(String.join("\n", ids) + "\n");
    weigh("postweigh", "--batch", Plan.BATCH);
  }

  private void evening() {
    ok("results", "--batch", Plan.BATCH, "--out", lab.folder().resolve("results").toString());
    ok("release", "--batch", Plan.BATCH);
    ok(
        "correct",
        "--entry",
        DayLedger.receiptOf(lab.folder(), ids.get(0)),
        "--set",
        "volume_ml=" + Plan.READ_AGAIN,
        "--reason",
        "bottle misread");
    ok("release", "--batch", Plan.BATCH);
    ok("verify");
  }
}
