package org.siltbench.station.command.drying;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.work.drying.Heat;
import picocli.CommandLine.Option;

/** What the thermometer said. */
final class HeatOptions {

  @Option(
      names = {"--temperature", "--temp"},
      paramLabel = "C",
      description = "what the oven's thermometer says, °C")
  private @Nullable BigDecimal celsius;

  @Option(names = "--thermometer", paramLabel = "NAME", description = "which thermometer")
  private String thermometer = "";

  Heat heat() {
    return new Heat(celsius, thermometer.strip());
  }
}
