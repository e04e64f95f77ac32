package org.siltbench.station.work.load;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.LogBase;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.results.BatchResults;

/**
 * The load that a batch's results and a table of discharge make.
 *
 * @param site only this site; null for each that was sampled
 * @param from begin of the event; null for where discharge and samples both begin
 * @param to its end; null for where one of them ends
 * @param flowStep two discharges further apart leave a gap
 * @param sampleStep two samples further apart leave a gap
 * @param shared relative standard uncertainty common to all samples; null for what the method says
 *     of its volumes
 * @param base of the logarithms of the rating curve
 */
public record BatchLoad(
    @Nullable String site,
    @Nullable OffsetDateTime from,
    @Nullable OffsetDateTime to,
    Duration flowStep,
    Duration sampleStep,
    @Nullable Double shared,
    LogBase base) {

  /** The whole common time at every site, with the method's shared uncertainty. */
  public static BatchLoad whole(Duration flowStep, Duration sampleStep) {
    return new BatchLoad(null, null, null, flowStep, sampleStep, null, LogBase.TEN);
  }

  /** The same from one moment to another; null leaves an end open. */
  public BatchLoad between(@Nullable OffsetDateTime begin, @Nullable OffsetDateTime end) {
    return new BatchLoad(site, begin, end, flowStep, sampleStep, shared, base);
  }

  /**
   * Calculates it.
   *
   * @throws Problem if batch, table or question make none, with the reason
   */
  public Loads of(Bench bench, MethodBook methods, String batch, Path discharge) {
    Flow flow = read(bench, discharge);
    BatchResults results =
        BatchResults.of(bench, methods, Batches.require(bench.register(), batch));
    return Loads.of(question(common(results.method().uncertainty())), flow, Samples.of(results));
  }

  private static Flow read(Bench bench, Path discharge) {
    try {
      return Flow.read(discharge, bench.clock());
    } catch (IOException e) {
      throw new Problem.Outside(e, LoadSays.UNREADABLE, discharge, Elsewhere.words(e));
    }
  }

  /** The question itself; the given uncertainty counts where none was stated. */
  public LoadQuestion question(double otherwise) {
    double common = shared == null ? otherwise : shared;
    return new LoadQuestion(site, from, to, flowStep, sampleStep, common, base);
  }

  private static double common(UncertaintyInputs u) {
    return Math.hypot(u.volumeCalibrationPct(), u.volumeTemperaturePct()) / 100;
  }
}
