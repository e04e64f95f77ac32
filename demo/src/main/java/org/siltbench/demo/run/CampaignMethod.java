package org.siltbench.demo.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Methods;
import org.siltbench.demo.storm.VolumeErrors;

/** The campaign's own method: a preset with the numbers of its own vessels and balance. */
public final class CampaignMethod {

  static final String KEY = "alder-fork";
  static final double HANDLING_MG = 0.05;
  static final VolumeErrors VOLUMES = new VolumeErrors(1.0, 0.3, 0.1, 1.0);

  private static final Map<String, String> OWN =
      Map.of(
          "key", KEY,
          "title", "Suspended solids of the Alder Fork campaign",
          "check_limit_mg", "0.1",
          "u_mass_mg", Double.toString(HANDLING_MG),
          "u_volume_reading_ml", Double.toString(VOLUMES.readingMl()),
          "u_volume_calibration_pct", Double.toString(VOLUMES.calibrationPct()),
          "u_volume_temperature_pct", Double.toString(VOLUMES.temperaturePct()),
          "u_subsampling_pct", Double.toString(VOLUMES.subsamplingPct()));

  private CampaignMethod() {}

  /** The method. */
  public static Method get() {
    StringBuilder text = new StringBuilder();
    for (String line : Methods.presets().get("sm-2540d-23").text().split("\n")) {
      String key = line.split("=", 2)[0].strip();
      String own = OWN.get(key);
      text.append(own == null ? line : key + " = " + own).append('\n');
    }
    return Method.parse(text.toString());
  }

  /** Writes it where a lab keeps its own methods. */
  static void write(Path lab) throws IOException {
    Path folder = Files.createDirectories(lab.resolve("methods"));
    Files.writeString(folder.resolve(KEY + ".method"), get().text(), StandardCharsets.UTF_8);
  }
}
