package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.lot.BlankLossTest;
import org.siltbench.station.work.weigh.Grams;
import picocli.CommandLine.Option;

/** {@code lot test}. */
final class LotTest implements Task {

  @Option(names = "--lot", required = true, paramLabel = "NAME", description = "the lot")
  private String lot = "";

  @Option(
      names = "--losses",
      required = true,
      split = ",",
      paramLabel = "MG",
      description = "what each test filter lost, mg, parted by commas; a gain is negative")
  private List<BigDecimal> losses = List.of();

  @Option(
      names = "--area",
      paramLabel = "CM2",
      description = "area of a filter, cm²; default: from the lot's diameter")
  private @Nullable BigDecimal area;

  @Option(
      names = "--limit",
      paramLabel = "MG_CM2",
      description = "most each may lose, mg/cm²; default: ${DEFAULT-VALUE} (ISO 11923)")
  private BigDecimal limit = BlankLossTest.ISO_LIMIT;

  @Override
  public int run(Session session) {
    BlankLossTest.Verdict verdict =
        new BlankLossTest(lot, losses, area, limit).record(session.existingBench());
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("lot", lot);
    document.put("worst_mg_cm2", Grams.decimal(verdict.worstMgCm2()));
    document.put("limit_mg_cm2", limit.toPlainString());
    document.put("pass", verdict.pass());
    session.document(document);
    session.fact(
        "lot "
            + lot
            + (verdict.pass() ? " passed" : " failed")
            + ": greatest loss "
            + Grams.decimal(verdict.worstMgCm2())
            + " mg/cm2, limit "
            + limit.toPlainString());
    if (!verdict.pass()) {
      session.message("The test is recorded. Wash the filters once more, or take another lot.");
    }
    return verdict.pass() ? 0 : 1;
  }
}
