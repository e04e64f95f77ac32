package org.siltbench.demo.bench.all;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page of figures, made from the history alone. */
final class Page {

  private static final int SHOWN = 8;

  private static final String HEAD =
      """
      # Figures

      Made by `demo/bench all` from [benchmarks.jsonl](benchmarks.jsonl), which keeps every run; do not edit by hand. Each measure runs in a process of its
      own and compares with a plain way of doing the same in the same run, so a ratio says more than a time. `demo/bench all --long` takes the sizes the
      goals are meant for, `--only NAME,NAME` some of the measures. What each one does: [stability](stability.md), [line format](line-format.md),
      [calculation](calc.md), [labels](labels.md), [ledger](ledger.md), [window](window.md).

      """;

  private Page() {}

  static String of(History history) {
    StringBuilder page = new StringBuilder(HEAD);
    newest(history, page);
    series(history, page);
    runs(history, page);
    return page.toString();
  }

  /** Of each figure the newest run that has it. */
  private static void newest(History history, StringBuilder page) {
    page.append(
        "## Newest\n\n| what | figure | goal | reached | run |\n| --- | --- | --- | --- | --- |\n");
    for (Claim claim : Measure.CLAIMS) {
      for (int run = history.runs().size() - 1; run >= 0; run--) {
        BigDecimal figure = history.runs().get(run).figures().get(claim.key());
        if (figure != null) {
          page.append(row(claim, figure, run + 1));
          break;
        }
      }
    }
  }

  private static String row(Claim claim, BigDecimal figure, int run) {
    return String.join(
            " | ",
            "| " + claim.words(),
            shown(figure, claim.unit()) + (claim.unit().isEmpty() ? "" : " " + claim.unit()),
            claim.goal().map(Claim.Goal::words).orElse(""),
            claim.goal().map(goal -> goal.met(figure) ? "yes" : "**no**").orElse(""),
            Integer.toString(run))
        + " |\n";
  }

  private static void series(History history, StringBuilder page) {
    page.append("\n## History\n\nOldest first, the last ")
        .append(SHOWN)
        .append(" of each; the number of the run in front.\n\n");
    page.append("| what | figures |\n| --- | --- |\n");
    for (Claim claim : Measure.CLAIMS) {
      List<String> values = new ArrayList<>();
      for (int run = 0; run < history.runs().size(); run++) {
        int number = run + 1;
        Optional.ofNullable(history.runs().get(run).figures().get(claim.key()))
            .ifPresent(figure -> values.add(number + ": " + shown(figure, claim.unit())));
      }
      if (!values.isEmpty()) {
        List<String> last = values.subList(Math.max(0, values.size() - SHOWN), values.size());
        page.append("| ")
            .append(claim.words())
            .append(" | ")
            .append(String.join(", ", last))
            .append(" |\n");
      }
    }
  }

  private static void runs(History history, StringBuilder page) {
    page.append("\n## Runs\n\n");
    Map<String, Integer> machines = new LinkedHashMap<>();
    history.runs().forEach(run -> machines.putIfAbsent(run.machine(), machines.size() + 1));
    machines.forEach(
        (words, number) ->
            page.append("Machine ").append(number).append(": ").append(words).append(".\n"));
    page.append(
        "\n| run | when | sources | machine | waiting jobs at its start | without an answer |\n");
    page.append("| --- | --- | --- | --- | --- | --- |\n");
    for (int i = 0; i < history.runs().size(); i++) {
      Figures run = history.runs().get(i);
      page.append("| ")
          .append(
              String.join(
                  " | ",
                  Integer.toString(i + 1),
                  run.at(),
                  run.revision(),
                  String.valueOf(machines.get(run.machine())),
                  run.load(),
                  String.join(", ", run.failed().keySet())))
          .append(" |\n");
    }
  }

  /** Three significant figures; counts whole. */
  static String shown(BigDecimal figure, String unit) {
    BigDecimal plain = figure.stripTrailingZeros();
    if (plain.scale() <= 0 && unit.isEmpty()) {
      return grouped(plain.toPlainString());
    }
    BigDecimal rounded = figure.round(new MathContext(3));
    return rounded.stripTrailingZeros().scale() <= 0
        ? grouped(rounded.stripTrailingZeros().toPlainString())
        : rounded.toPlainString();
  }

  private static String grouped(String whole) {
    return whole.replaceAll("(\\d)(?=(\\d{3})+$)", "$1,");
  }
}
