package org.siltbench.labels.sheet;

import java.util.ArrayList;
import java.util.List;

/** The reminder on the back of the field sheet; docs/in-the-field.md tells the whole. */
final class FieldSteps {

  static final List<String> CAUTIONS =
      List.of(
          "Moving water is stronger than it looks. Never work alone, wear a flotation vest near or in"
              + " water, do not wade a rising or murky stream, know your way out. If in doubt, leave"
              + " the sample in the river.",
          "Lightning, flood warning, falling trees, traffic on a bridge: stop and go. Keep warm and"
              + " dry; cold hands drop glass.",
          "Glass under vacuum can implode. Use thick-walled flasks without scratches, tape or net"
              + " them, wear eye protection, stay within the pump's and the filter's limit.",
          "River water may carry germs and chemicals: cover cuts, wear gloves, wash before eating."
              + " Local rules and the site's permit come before this sheet.");

  private FieldSteps() {}

  static List<String> steps(boolean wholeBottle) {
    List<String> out = new ArrayList<>();
    out.add("Write in pencil. Note site, time, gauge height and water temperature first.");
    out.add(bottle(wholeBottle));
    out.add(
        "Read the bag's ID aloud against this sheet. Lift the filter by its rim with flat tweezers"
            + " and lay it on the support, collecting side up.");
    out.add(
        "Look for both seals, one above the filter and one below. Set the housing straight on its"
            + " thread and close it by hand: a crossed thread leaks past the filter.");
    out.add(wholeBottle ? WHOLE_POUR : ALIQUOT_POUR);
    out.add(
        "Read the volume on level ground with your eye at the mark, once from each side. If the two"
            + " differ, write both.");
    out.add(
        "Now the vacuum. Write its reading. If the filter slows to drops, do not force it: stop"
            + " pouring, measure what is left, say where it goes, take a second filter for it.");
    out.add(
        "At the end wash the walls of the funnel down with a little clean water. Salt water: rinse"
            + " as the method says. Rinse water is not sample volume.");
    out.add(
        "When the filter is dry of standing water, let the air in. Only then open the housing.");
    out.add(
        "Fold the filter once with the sediment inside, without tearing; free a stuck edge with a"
            + " drop of clean water. Put it into its own bag and read the ID once more.");
    out.add(
        "Write on the bag: site, date, time, volume, initials. Close it, keep it cool and dark.");
    out.add(
        "Blanks take the same steps with clean water, in their place in the order, not at the end.");
    return out;
  }

  private static final String WHOLE_POUR =
      "Filter the whole bottle. Swirl, pour, then wash every grain from the bottle onto the filter"
          + " with small amounts of clean water.";

  private static final String ALIQUOT_POUR =
      "Shake the bottle until nothing lies on its floor, pour your portion at once, shake again"
          + " before the next. Sand settles while you look at it.";

  private static String bottle(boolean wholeBottle) {
    return wholeBottle
        ? "Do not rinse the bottle with sample: a whole-bottle sediment sample would gain grains."
        : "Rinse the aliquot bottle at least twice with the water to be sampled and empty it"
            + " downstream. (Never rinse a bottle whose whole content is the sample.)";
  }
}
