package org.siltbench.station.register;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Entry;

/** The register as text: effective entries, index, amendments and rows, each in its own order. */
final class Export {

  private final Sql sql;
  private final Register register;
  private final Appendable out;

  Export(Sql sql, Register register, Appendable out) {
    this.sql = sql;
    this.register = register;
    this.out = out;
  }

  void write() throws SQLException {
    register.each(entry -> line("entry", entry(entry)));
    sql.list(
        row ->
            line(
                "subject",
                row.getString(1),
                row.getString(2),
                row.getString(3) + '/' + row.getLong(4)),
        "select type, id, bench, seq from subject order by type, id, hlc_ms, hlc_n, bench, seq");
    sql.list(
        row ->
            line(
                "amendment",
                row.getString(1) + '/' + row.getLong(2),
                row.getString(3) + '/' + row.getLong(4),
                row.getString(5)),
        """
        select bench, seq, by_bench, by_seq, changes from amendment
        order by bench, seq, hlc_ms, hlc_n, by_bench, by_seq, place""");
    sql.list(
        row ->
            line(
                "state",
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getString(5)),
        "select type, id, parent, status, summary from state order by type, id");
  }

  private static String entry(Entry entry) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ref", entry.ref().toString());
    json.put("hlc", entry.hlc().millis() + "." + entry.hlc().counter());
    json.put("at", entry.at().toString());
    json.put("by", entry.by());
    json.put("kind", entry.kind());
    json.put("kv", (long) entry.kv());
    json.put("data", entry.data());
    return Json.canonical(json);
  }

  private boolean line(String... words) {
    try {
      out.append(Json.write(java.util.List.of(words))).append('\n');
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
