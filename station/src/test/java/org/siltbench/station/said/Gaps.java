package org.siltbench.station.said;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of the gaps that a sentence has. */
public final class Gaps {

  private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

  private Gaps() {}

  public static Set<String> of(String sentence) {
    Set<String> out = new TreeSet<>();
    Matcher gap = GAP.matcher(sentence);
    while (gap.find()) {
      out.add(gap.group(1));
    }
    return out;
  }
}
