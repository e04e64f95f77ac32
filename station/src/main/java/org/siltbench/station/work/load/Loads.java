package org.siltbench.station.work.load;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.calc.load.Series;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * The load at each site.
 *
 * @param question what was asked
 * @param sites one a sampled site
 * @param notes what to know of the tables
 */
public record Loads(LoadQuestion question, List<SiteLoad> sites, List<Words> notes) {

  /** Copies the lists. */
  public Loads {
    sites = List.copyOf(sites);
    notes = List.copyOf(notes);
  }

  /**
   * Holds the samples against the discharge of their sites.
   *
   * @throws Problem.WrongUse if a site has no discharge, two values share a time, or discharge and
   *     samples share no time
   */
  public static Loads of(LoadQuestion question, Flow flow, Samples samples) {
    Map<String, List<Sampled>> sites = new LinkedHashMap<>();
    for (Sampled sampled : samples.all()) {
      if (question.site() == null || Flow.key(question.site()).equals(Flow.key(sampled.site()))) {
        sites.computeIfAbsent(Flow.key(sampled.site()), k -> new ArrayList<>()).add(sampled);
      }
    }
    if (sites.isEmpty()) {
      throw question.site() == null
          ? new Problem.WrongUse(LoadSays.NO_SAMPLE)
          : new Problem.WrongUse(LoadSays.NO_SAMPLE_AT, question.site());
    }
    List<SiteLoad> out = new ArrayList<>();
    sites.forEach((key, own) -> out.add(site(question, flow, key, own, sites.size())));
    return new Loads(question, out, notes(flow, samples));
  }

  private static SiteLoad site(
      LoadQuestion question, Flow flow, String key, List<Sampled> samples, int sites) {
    String name = samples.get(0).site();
    List<Series.Point> own = flow.bySite().get(key);
    if (own == null && flow.bySite().size() == 1 && sites == 1) {
      own = flow.bySite().values().iterator().next();
    }
    if (own == null) {
      throw new Problem.WrongUse(LoadSays.NO_SITE, name, String.join(", ", flow.bySite().keySet()));
    }
    return new SiteCalculation(question, name, own, samples).result();
  }

  private static List<Words> notes(Flow flow, Samples samples) {
    List<Words> out = new ArrayList<>();
    if (flow.empty() > 0) {
      out.add(Said.of(LoadSays.NOTE_EMPTY, flow.empty()));
    }
    if (samples.left() > 0) {
      out.add(Said.of(LoadSays.NOTE_LEFT, samples.left()));
    }
    out.add(Said.of(LoadSays.NOTE_UNCERTAINTY));
    return out;
  }

  /** A moment as text, to the second where there is more. */
  static String text(Instant at) {
    return at.truncatedTo(java.time.temporal.ChronoUnit.SECONDS).toString();
  }
}
