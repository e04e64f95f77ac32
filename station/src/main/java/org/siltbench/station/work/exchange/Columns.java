package org.siltbench.station.work.exchange;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.siltbench.station.said.Said;
import org.siltbench.station.work.receipt.ReceiptReader;

/** Which column of the receipt table a heading means, in the words of several languages. */
final class Columns {

  /** The day and the minute of collection where they stand apart. */
  static final String DATE = "date";

  static final String TIME = "time";

  /** A column that is left out. */
  static final String NONE = "none";

  /** Meanings and their headings; those behind the bar fit, but could mean something else. */
  private static final String WORDS =
      """
      filter: filter, filter id, filter no, filter nr, filter number, filternummer, filter code, filtre, no filtre, n filtre, id filtre, filtro, bag, bag id, bag no, bag code, beutel, beutel nr, sachet | code, id
      sample: sample, sample no, sample nr, sample id, sample number, sample code, probe, probe nr, proben nr, probennummer, probennr, echantillon, no echantillon, n echantillon, muestra, no muestra | no, nr, number
      role: role, role of filter, sample type, probenart | type, kind, art
      pair: pair, pair no, duplicate pair, paar | duplicate, dup
      pair_kind: pair kind, kind of pair, duplicate kind
      filter_order: filter order, order of filters, use | order
      site: site, site name, station, sampling site, sampling point, messstelle, probenahmestelle, ort, lieu, site de prelevement, sitio | place, location, name, stelle
      date: date, sample date, sampling date, date sampled, date collected, datum, probenahmedatum, date de prelevement, fecha | day, tag, jour
      time: time, sample time, sampling time, time sampled, time collected, clock time, uhrzeit, heure, heure de prelevement, hora | zeit
      collected: collected, collected at, date time, date and time, datetime, sampled, sampled at, sample date time, sampling date time, datum uhrzeit, datum zeit, probenahme, entnahme, date heure, date et heure, fecha hora | timestamp
      filtered_from: filtered from, filtration from, filtration start, filtration begin, filter start, filtriert von, filtration von, filtration beginn, filtration debut | start, start time, from, beginn, debut, von
      filtered_to: filtered to, filtration to, filtration end, filter end, filtriert bis, filtration bis, filtration ende, filtration fin | end, end time, to, ende, fin, bis
      taken: taken, aliquot or whole, aliquot whole
      portions_ml: portions, portions poured, portionen | poured
      left_ml: left, left over, leftover, volume left | rest, remaining
      left_to: left to, left goes to
      volume_ml: volume, vol, volume filtered, filtered volume, vol filtered, filtered vol, filtration volume, filtriertes volumen, filtrationsvolumen, filtratvolumen, filtratmenge, volume filtre, vol filtre, volumen filtrado, volumen, filtered | menge, amount, sample volume, probenvolumen
      volume_u_ml: volume u, volume uncertainty, u volume
      rinse: rinse, rinsed, filter rinsed, gespult, rince
      condition: condition, filter condition, bag condition, zustand, etat | state
      gauge_m: gauge, gauge height, gage height, river gauge, pegel, pegelstand, wasserstand, hauteur d eau, hauteur echelle, nivel | stage, level, water level, height, hauteur
      water_c: water temperature, water temp, temp water, wassertemperatur, wasser temperatur, wasser temp, t wasser, temperature de l eau, temperature eau, temp eau, temperatura agua | temp, temperature, temperatur
      conductivity_us_cm: conductivity, electrical conductivity, leitfahigkeit, elektrische leitfahigkeit, lf, conductivite, conductividad | ec, cond, lf 25
      remarks: remarks, remark, notes, note, comments, comment, bemerkung, bemerkungen, anmerkung, anmerkungen, remarque, remarques, observations, observaciones
      by: by, sampled by, collected by, initials, sampler, field crew, probenehmer, kurzel, preleveur | who, operator, crew
      """;

  private static final Map<String, String> SURE = new HashMap<>();
  private static final Map<String, String> LIKELY = new HashMap<>();
  private static final Pattern BRACKETS = Pattern.compile("[(\\[]\\s*([^)\\]]*?)\\s*[)\\]]");

  static {
    WORDS.lines().forEach(Columns::learn);
    for (String column : ReceiptReader.COLUMNS) {
      SURE.put(plain(column), column);
    }
  }

  private Columns() {}

  private static void learn(String line) {
    String column = line.substring(0, line.indexOf(':')).strip();
    String[] words = line.substring(line.indexOf(':') + 1).split("\\|");
    List.of(words[0].split(",")).forEach(word -> SURE.put(word.strip(), column));
    if (words.length > 1) {
      List.of(words[1].split(",")).forEach(word -> LIKELY.put(word.strip(), column));
    }
  }

  /**
   * What a heading means.
   *
   * @param column a column of the receipt table, or date, or time
   * @param sure false where the heading could mean something else
   */
  record Meaning(String column, boolean sure) {}

  /** The meaning of a heading, with or without its unit. */
  static Optional<Meaning> of(String heading) {
    Optional<Meaning> whole = word(plain(heading));
    return whole.isPresent() ? whole : word(plain(withoutUnit(heading)));
  }

  private static Optional<Meaning> word(String plain) {
    String sure = SURE.get(plain);
    if (sure != null) {
      return Optional.of(new Meaning(sure, true));
    }
    return Optional.ofNullable(LIKELY.get(plain)).map(column -> new Meaning(column, false));
  }

  /** The unit a heading names: in brackets, or its last word; empty if none. */
  static String unit(String heading) {
    Matcher brackets = BRACKETS.matcher(heading);
    while (brackets.find()) {
      if (Units.known(brackets.group(1))) {
        return brackets.group(1);
      }
    }
    String bare = heading.strip();
    int last =
        Math.max(bare.lastIndexOf(' '), Math.max(bare.lastIndexOf('_'), bare.lastIndexOf('\n')));
    String word = last < 0 ? "" : bare.substring(last + 1).replaceAll("^[/,;]+", "");
    if (bare.toLowerCase(Locale.ROOT).endsWith("_us_cm")) {
      return "µS/cm";
    }
    return Units.known(word) ? word : "";
  }

  private static String withoutUnit(String heading) {
    String unit = unit(heading);
    String bare = BRACKETS.matcher(heading).replaceAll(" ");
    if (!unit.isEmpty() && bare.strip().endsWith(unit)) {
      bare = bare.strip().substring(0, bare.strip().length() - unit.length());
    }
    return bare.replaceAll("(?i)[\\s,/]+in\\s*$", " ");
  }

  /** Lower case, without accents and signs. */
  static String plain(String text) {
    String lower = text.toLowerCase(Locale.ROOT).replace("ß", "ss").replace("°", " ");
    String bare = Normalizer.normalize(lower, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    return bare.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  /** Refuses an answer whose value is no column or unit. */
  static void check(String word, String key, String value) {
    if (key.startsWith("unit:")) {
      if (!Units.known(value)) {
        throw Answers.wrong(word, Said.of(ExchangeSays.HOW_UNITS, Units.all()));
      }
      return;
    }
    Set<String> known = new HashSet<>(ReceiptReader.COLUMNS);
    known.addAll(List.of(DATE, TIME, NONE));
    if (!known.contains(value)) {
      throw Answers.wrong(
          word, Said.of(ExchangeSays.HOW_COLUMN, String.join(", ", ReceiptReader.COLUMNS)));
    }
  }
}
