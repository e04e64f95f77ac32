package org.siltbench.demo.storm;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A day on Alder Fork: two sites, a bottle every quarter of an hour, each through its own filter at
 * once. What people did goes into the notes, what was true goes into the truths.
 */
public final class FieldDay {

  private static final Duration EVERY = Duration.ofMinutes(15);
  private static final int ROUNDS = 24;
  private static final int DUPLICATE_EVERY = 9;

  private final Storm storm;
  private final Truths truths;
  private final VolumeErrors errors;
  private final SplittableRandom chance;
  private final List<Taken> notes = new ArrayList<>();
  private final Faults faults = new Faults();

  public FieldDay(Storm storm, Truths truths, VolumeErrors errors, long seed) {
    this.storm = storm;
    this.truths = truths;
    this.errors = errors;
    this.chance = new SplittableRandom(seed);
  }

  /** What went wrong on purpose. */
  public Faults faults() {
    return faults;
  }

  /** Works the whole day with the bags that were issued, and answers the field notes. */
  public List<Taken> work(OffsetDateTime first, Bags bags) {
    Deque<String> filters = new ArrayDeque<>(bags.samples());
    Deque<String> spares = new ArrayDeque<>(bags.spares());
    blanks(first, bags);
    int number = 0;
    for (int round = 0; round < ROUNDS; round++) {
      OffsetDateTime when = first.plus(EVERY.multipliedBy(round));
      for (Site site : List.of(Site.UPPER_FORD, Site.MEADOW_OUTLET)) {
        number++;
        sample(number, round, site, when, filters, spares);
      }
    }
    mishaps();
    return List.copyOf(notes);
  }

  private void blanks(OffsetDateTime first, Bags bags) {
    List<Site> sites = List.of(Site.UPPER_FORD, Site.MEADOW_OUTLET);
    for (int i = 0; i < bags.fieldBlanks().size(); i++) {
      String id = bags.fieldBlanks().get(i);
      truths.change(id, f -> f.filtered(0, 0));
      notes.add(
          new Taken(
              id,
              "FB" + (i + 1),
              "field-blank",
              "",
              1,
              sites.get(i % 2),
              first.minusMinutes(10),
              200,
              "ok",
              "clean water poured on site"));
    }
    for (String id : bags.tripBlanks()) {
      truths.change(id, f -> f.filtered(0, 0));
      notes.add(
          new Taken(
              id, "TB1", "trip-blank", "", 1, sites.get(0), first, 0, "ok", "never unfolded"));
    }
  }

  private void sample(
      int number,
      int round,
      Site site,
      OffsetDateTime when,
      Deque<String> filters,
      Deque<String> spares) {
    String name = String.format(Locale.ROOT, "AF%02d", number);
    boolean pair = number % DUPLICATE_EVERY == 0;
    boolean clogged = round == 7 && site.equals(Site.UPPER_FORD);
    double bottle = storm.concentration(site, when);
    int volume = volume(bottle);
    if (clogged) {
      faults.clogged = name;
      double aliquot = errors.inAliquot(bottle, chance);
      add(filters.remove(), name, "", 1, site, when, 120, bottle, aliquot, "clogged after 120 mL");
      add(spares.remove(), name, "", 2, site, when, 80, bottle, aliquot, "the rest of the 200 mL");
      return;
    }
    add(filters.remove(), name, pair ? "P" + number : "", 1, site, when, volume, bottle);
    if (pair) {
      add(spares.remove(), name + "R", "P" + number, 1, site, when, volume, bottle);
    }
  }

  private void add(
      String id,
      String sample,
      String pair,
      int order,
      Site site,
      OffsetDateTime when,
      int volume,
      double bottle) {
    add(id, sample, pair, order, site, when, volume, bottle, errors.inAliquot(bottle, chance), "");
  }

  private void add(
      String id,
      String sample,
      String pair,
      int order,
      Site site,
      OffsetDateTime when,
      int volume,
      double bottle,
      double aliquot,
      String remark) {
    double litres = errors.trueMillilitres(volume, chance) / 1000;
    truths.change(id, f -> f.filtered(aliquot * litres, bottle));
    notes.add(new Taken(id, sample, "sample", pair, order, site, when, volume, "ok", remark));
  }

  /** Clear water needs more of it. */
  private static int volume(double concentration) {
    if (concentration < 20) {
      return 500;
    }
    return concentration < 120 ? 300 : 200;
  }

  /** One bag is lost, one filter tears, one is slow to dry: on purpose. */
  private void mishaps() {
    Taken lost = plain(33);
    faults.lost = lost.filter();
    Taken torn = plain(21);
    notes.set(
        notes.indexOf(torn), torn.in("torn-loss", "tore when it was folded, a piece is gone"));
    truths.change(torn.filter(), f -> f.losing(4));
    faults.torn = torn.filter();
    Taken slow = plain(19);
    truths.change(slow.filter(), TrueFilter::slowToDry);
    faults.slow = slow.filter();
    faults.damp = plain(24).filter();
  }

  private Taken plain(int number) {
    String name = String.format(Locale.ROOT, "AF%02d", number);
    return notes.stream().filter(note -> note.sample().equals(name)).findFirst().orElseThrow();
  }
}
