package org.siltbench.station.work.log;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.log.Entered;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.paper.InPrint;

/** Makes the log sheet of a batch from the ledger's entries. */
public final class LogSheets {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private final RegisterView register;
  private final Map<EntryRef, Entry> weighings = new LinkedHashMap<>();
  private final List<LogSheet.Correction> corrections = new ArrayList<>();
  private final Set<String> named = new HashSet<>();
  private final List<Entry> checks = new ArrayList<>();
  private final List<LogSheet.InSpite> overrides = new ArrayList<>();

  private LogSheets(RegisterView register) {
    this.register = register;
  }

  /** The sheet. */
  public static LogSheet of(RegisterView register, BatchState batch, Method method) {
    LogSheets sheets = new LogSheets(register);
    sheets.gather(batch);
    List<LogSheet.Line> lines = sheets.weighings.values().stream().map(sheets::line).toList();
    return new LogSheet(
        batch.code(),
        batch.name(),
        method.standard() + ", " + method.edition(),
        lines,
        sheets.checkLines(),
        sheets.overrides,
        sheets.corrections);
  }

  private void gather(BatchState batch) {
    List<Entry> all = new ArrayList<>();
    for (String id : batch.filters().keySet()) {
      for (Entry entry : register.history(About.filter(id))) {
        if (entry.kind().equals("weighing")) {
          all.add(entry);
        } else if (!entry.kind().equals("swapped")) {
          corrections(entry);
        }
      }
    }
    all.sort(
        Comparator.comparing(Entry::hlc)
            .thenComparing(entry -> entry.ref().bench())
            .thenComparingLong(entry -> entry.ref().seq()));
    TreeSet<String> balances = new TreeSet<>();
    for (Entry entry : all) {
      if (weighings.putIfAbsent(entry.ref(), entry) == null) {
        corrections(entry);
        balances.add(Fields.of(entry).text("balance"));
      }
    }
    balances.forEach(this::checksOf);
  }

  private void checksOf(String balance) {
    TreeSet<String> days = new TreeSet<>();
    weighings.values().forEach(entry -> days.add(entry.at().toLocalDate().toString()));
    for (Entry entry : register.history(About.balance(balance))) {
      boolean sameDay = days.contains(entry.at().toLocalDate().toString());
      if (sameDay && entry.kind().equals("check.weighed")) {
        checks.add(entry);
        corrections(entry);
      } else if (sameDay && entry.kind().equals("check.overridden")) {
        checks.add(entry);
        overrides.add(override(entry));
      }
    }
  }

  private static LogSheet.InSpite override(Entry entry) {
    Fields data = Fields.of(entry);
    return new LogSheet.InSpite(
        entry.ref().toString(),
        entry.at(),
        data.text("balance"),
        entry.by(),
        data.text("fault"),
        data.text("reason"));
  }

  private void corrections(Entry entry) {
    for (Entry amending : register.amendmentsOf(entry.ref())) {
      if (!named.add(amending.ref() + " of " + entry.ref())) {
        continue;
      }
      Fields data = Fields.of(amending);
      corrections.add(
          new LogSheet.Correction(
              amending.ref().toString(),
              entry.ref().toString(),
              amending.at(),
              amending.by(),
              Amendments.inWords(register, entry.ref(), amending),
              data.text("reason")));
    }
  }

  private LogSheet.Line line(Entry entry) {
    Fields data = Fields.of(entry);
    Amendments amendments = new Amendments(register, entry);
    boolean voided = data.flag("void");
    Entered reading = amendments.entered("mass_g", " g");
    return new LogSheet.Line(
        entry.ref().toString(),
        data.time("stated_at").orElse(entry.at()),
        grouped(amendments.entered("filter", "")),
        data.text("status") + " " + purpose(data),
        voided ? takenBack(reading) : reading,
        data.find("zero_g").map(zero -> zero(zero, data)).orElse(""),
        Entered.of(entry.by()),
        data.text("balance"),
        room(entry),
        check(data.text("balance"), entry.at()),
        note(data, voided, reading.struck().isEmpty()));
  }

  private static Entered grouped(Entered filter) {
    return new Entered(
        InPrint.id(filter.value()), filter.struck().stream().map(InPrint::id).toList());
  }

  private static String zero(String grams, Fields data) {
    return InPrint.minus(InPrint.alike(grams, data.text("mass_g"))) + " g";
  }

  private static String purpose(Fields data) {
    String purpose = data.text("purpose");
    return purpose.isEmpty() || purpose.equals("result") ? data.text("round") : purpose;
  }

  private static Entered takenBack(Entered reading) {
    List<String> struck = new ArrayList<>(reading.struck());
    struck.add(reading.value());
    return new Entered("", struck);
  }

  private static String note(Fields data, boolean voided, boolean asRead) {
    List<String> notes = new ArrayList<>();
    if (voided) {
      notes.add("taken back");
    }
    if (!asRead) {
      notes.add("corrected");
    }
    if (data.flag("keyed")) {
      notes.add("keyed in");
    } else if (data.text("observed").equals("false")) {
      notes.add("stated");
    }
    if (data.text("stability").equals("two presses")) {
      notes.add("two presses, not watched");
    }
    if (data.number("moisture_mg", 0) > 0) {
      notes.add("moisture " + data.text("moisture_mg") + " mg");
    }
    data.find("verdict").map(InPrint::words).ifPresent(notes::add);
    return String.join(", ", notes);
  }

  private String check(String balance, OffsetDateTime at) {
    String found = "none";
    for (Entry entry : checks) {
      Fields data = Fields.of(entry);
      boolean before = !entry.at().isAfter(at);
      boolean sameDay = entry.at().toLocalDate().equals(at.toLocalDate());
      if (before && sameDay && data.text("balance").equals(balance)) {
        String when = entry.at().format(CLOCK);
        found =
            entry.kind().equals("check.overridden")
                ? found + ", overridden " + when
                : (data.flag("pass") ? "passed " : "FAILED ") + when;
      }
    }
    return found;
  }

  private String room(Entry entry) {
    String found = "";
    for (Entry noted : register.history(About.room(entry.ref().bench()))) {
      if (!noted.at().isAfter(entry.at())) {
        Fields data = Fields.of(noted);
        found =
            String.join(
                ", ",
                List.of(
                    data.text("temperature_c") + " °C",
                    data.text("pressure_hpa") + " hPa",
                    data.text("humidity_pct") + " %"));
      }
    }
    return found;
  }

  private List<LogSheet.Check> checkLines() {
    List<LogSheet.Check> out = new ArrayList<>();
    for (Entry entry : checks) {
      if (entry.kind().equals("check.overridden")) {
        continue;
      }
      Fields data = Fields.of(entry);
      out.add(
          new LogSheet.Check(
              entry.ref().toString(),
              entry.at(),
              data.text("weight"),
              data.text("phase"),
              data.text("certified_g") + " g",
              data.text("reading_g") + " g",
              InPrint.signed(data.text("error_mg")) + " mg",
              "±" + data.text("limit_mg") + " mg",
              data.flag("pass")));
    }
    return out;
  }
}
