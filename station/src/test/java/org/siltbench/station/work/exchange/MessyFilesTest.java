package org.siltbench.station.work.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;

/**
 * Invented field notes in the shapes that people and spreadsheets make, each with what must come
 * out: the exact values, or the doubts. A wrong silent reading fails.
 */
class MessyFilesTest {

  private static final List<FilterId> IDS = BatchCode.of(new BenchCode("K3DF"), 7).filters(6);
  private static final Charset WESTERN = Charset.forName("windows-1252");

  @TempDir Path folder;

  /** One file, the answers given, and what must come out of it. */
  private record Messy(
      String name, byte[] bytes, List<String> answers, List<String> rows, List<String> doubts) {

    static Messy of(String name, String text) {
      return new Messy(
          name, filled(text).getBytes(StandardCharsets.UTF_8), List.of(), List.of(), List.of());
    }

    static Messy in(Charset charset, String name, String text) {
      return new Messy(name, filled(text).getBytes(charset), List.of(), List.of(), List.of());
    }

    Messy after(int... first) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      for (int b : first) {
        out.write(b);
      }
      out.writeBytes(bytes);
      return new Messy(name, out.toByteArray(), answers, rows, doubts);
    }

    Messy as(String... given) {
      return new Messy(name, bytes, List.of(given), rows, doubts);
    }

    /** Rows as "1 volume_ml=250 site=Ford": the number of the ID and what else stands there. */
    Messy reads(String... expected) {
      return new Messy(name, bytes, answers, List.of(expected), doubts);
    }

    /** Each doubt is known by a piece of its question; no other may stand. */
    Messy doubts(String... expected) {
      return new Messy(name, bytes, answers, rows, List.of(expected));
    }

    private static String filled(String text) {
      String out = text;
      for (int i = 0; i < IDS.size(); i++) {
        out = out.replace("{" + (i + 1) + "}", IDS.get(i).text());
        out = out.replace("{g" + (i + 1) + "}", IDS.get(i).grouped());
      }
      return out;
    }
  }

  private static List<Messy> files() {
    List<Messy> all = new ArrayList<>();
    all.addAll(encodings());
    all.addAll(numbers());
    all.addAll(dates());
    all.addAll(headings());
    all.addAll(lines());
    all.addAll(words());
    return all;
  }

  private static List<Messy> encodings() {
    return List.of(
        Messy.of("the table as it should be", "filter,site,volume_ml\n{1},Ford,250\n")
            .reads("1 site=Ford volume_ml=250"),
        Messy.of("UTF-8 with a byte order mark", "filter;site;volume_ml\n{1};Mühle;250\n")
            .after(0xEF, 0xBB, 0xBF)
            .reads("1 site=Mühle volume_ml=250"),
        Messy.in(WESTERN, "Windows-1252 is asked about", "filter;Ort;volume_ml\n{1};Mühle;250\n")
            .as("Ort=site")
            .doubts("not UTF-8"),
        Messy.in(WESTERN, "Windows-1252, told", "filter;Ort;volume_ml\n{1};Mühlbrücke;250\n")
            .as("charset=windows-1252")
            .reads("1 site=Mühlbrücke volume_ml=250"),
        Messy.in(
                StandardCharsets.UTF_16LE,
                "UTF-16 little end first with its mark",
                "\uFEFFfilter\tsite\tvolume_ml\r\n{1}\tŁęg\t250\r\n")
            .reads("1 site=Łęg volume_ml=250"),
        Messy.in(
                StandardCharsets.UTF_16BE,
                "UTF-16 big end first with its mark",
                "\uFEFFfilter\tsite\tvolume_ml\r\n{1}\tFord\t250\r\n")
            .reads("1 site=Ford volume_ml=250"),
        Messy.in(
                StandardCharsets.UTF_16LE,
                "UTF-16 without a mark",
                "filter;site;volume_ml\r\n{1};Ford;250\r\n")
            .reads("1 site=Ford volume_ml=250"),
        Messy.of("old line ends", "filter;site;volume_ml\r{1};Ford;250\r{2};Ford;300\r")
            .reads("1 site=Ford volume_ml=250", "2 site=Ford volume_ml=300"),
        Messy.of(
                "a spreadsheet's line for the separator",
                "sep=;\nfilter;site;volume_ml\n{1};A, B;250\n")
            .reads("1 site=A, B volume_ml=250"),
        Messy.of("parted by bars", "filter|site|volume_ml\n{1}|Ford|250\n")
            .reads("1 site=Ford volume_ml=250"),
        Messy.of(
                "line breaks and separators in quotes",
                "filter,remarks,volume_ml\n{1},\"muddy,\nleaf \"\"big\"\"\",250\n{2},,300\n")
            .reads("1 remarks=muddy, leaf \"big\" volume_ml=250", "2 volume_ml=300"));
  }

  private static List<Messy> numbers() {
    return List.of(
        Messy.of("decimal commas", "filter;Volumen (mL);Pegel (m)\n{1};250,5;0,42\n{2};300;1,425\n")
            .reads("1 volume_ml=250.5 gauge_m=0.42", "2 volume_ml=300 gauge_m=1.425"),
        Messy.of("a comma that could mean thousands", "filter;volume (mL)\n{1};1,250\n{2};1,100\n")
            .doubts("decimal mark or for thousands", "decimal mark or for thousands"),
        Messy.of("the same, said to be thousands", "filter;volume (mL)\n{1};1,250\n")
            .as("decimals=point")
            .reads("1 volume_ml=1250"),
        Messy.of("a point that could mean thousands", "filter;volume (mL)\n{1};1.250\n")
            .doubts("decimal mark or for thousands"),
        Messy.of("a point among commas", "filter;volume (mL);gauge (m)\n{1};1.250;0,5\n")
            .doubts("decimal mark or for thousands"),
        Messy.of("both marks", "filter;volume (mL)\n{1};1.250,5\n{2};250,5\n")
            .reads("1 volume_ml=1250.5", "2 volume_ml=250.5"),
        Messy.of(
                "blanks and apostrophes as thousands", "filter;volume (mL)\n{1};1 250\n{2};1'250\n")
            .reads("1 volume_ml=1250", "2 volume_ml=1250"),
        Messy.of("litres in the heading", "filter;Volume (L)\n{1};0.25\n{2};0.5\n")
            .reads("1 volume_ml=250", "2 volume_ml=500"),
        Messy.of("units in the cells", "filter;volume\n{1};250 ml\n{2};0.5 L\n")
            .reads("1 volume_ml=250", "2 volume_ml=500"),
        Messy.of("no unit, but only millilitres are possible", "filter;volume\n{1};250\n{2};300\n")
            .reads("1 volume_ml=250", "2 volume_ml=300"),
        Messy.of("no unit, could be litres", "filter;volume\n{1};2\n{2};5\n")
            .doubts("In which unit"),
        Messy.of(
                "no unit for the gauge, and it stays settled",
                "filter;volume_ml;gauge\n{1};250;42\n")
            .as("unit:gauge=cm")
            .reads("1 volume_ml=250 gauge_m=0.42"),
        Messy.of(
                "Fahrenheit and feet",
                "filter,volume (mL),Water temp (°F),Gage height (ft)\n{1},250,50,2.5\n")
            .reads("1 volume_ml=250 water_c=10 gauge_m=0.762"),
        Messy.of("millisiemens", "filter;volume (mL);Leitfähigkeit [mS/cm]\n{1};250;0,42\n")
            .reads("1 volume_ml=250 conductivity_us_cm=420"),
        Messy.of("portions with blanks", "filter;portions (mL);left (mL)\n{1};250 + 250 + 120;30\n")
            .reads("1 portions_ml=250+250+120 left_ml=30"),
        Messy.of("portions without a plus", "filter;portions (mL)\n{1};250 250\n")
            .doubts("no clear number"),
        Messy.of("a range", "filter;volume (mL)\n{1};180 - 200\n").reads("1 volume_ml=180-200"),
        Messy.of("about", "filter;volume (mL)\n{1};ca. 250\n{2};<5\n")
            .doubts("no clear number", "no clear number"),
        Messy.of(
                "nothing, said in words",
                "filter;volume (mL);water temp (°C)\n{1};250;n/a\n{2};300;-\n")
            .reads("1 volume_ml=250", "2 volume_ml=300"),
        Messy.of("a unit that does not fit", "filter;volume (mL)\n{1};250 cm\n")
            .doubts("does not fit"),
        Messy.of(
                "a decimal comma in a file parted by commas",
                "filter,volume (mL),site\n{1},250,5,Ford\n{2},300,Ford\n{3},250,Ford\n")
            .doubts("more cells than there are columns"));
  }

  private static List<Messy> dates() {
    return List.of(
        Messy.of(
                "a day beyond twelve proves the order",
                "filter;Datum;Uhrzeit;volume_ml\n{1};03.04.2026;9:45;250\n{2};14.04.2026;10:00;250\n")
            .reads(
                "1 collected=2026-04-03T09:45 volume_ml=250",
                "2 collected=2026-04-14T10:00 volume_ml=250"),
        Messy.of(
                "an open order is asked about, points or not",
                "filter;Datum;Uhrzeit;volume_ml\n{1};03.04.2026;9:45;250\n")
            .doubts("Which comes first"),
        Messy.of("slashes, told", "filter,date,time,volume_ml\n{1},03/04/2026,09:45,250\n")
            .as("dates=day-first")
            .reads("1 collected=2026-04-03T09:45 volume_ml=250"),
        Messy.of(
                "month first, proven",
                "filter,date,time,volume_ml\n{1},04/14/2026,9:45 AM,250\n{2},04/03/2026,1:05 pm,250\n")
            .reads(
                "1 collected=2026-04-14T09:45 volume_ml=250",
                "2 collected=2026-04-03T13:05 volume_ml=250"),
        Messy.of(
                "two orders in one file",
                "filter,date,time,volume_ml\n{1},04/14/2026,09:45,250\n{2},14/04/2026,09:45,250\n")
            .doubts("do not all stand in one order"),
        Messy.of(
                "what was said does not fit",
                "filter,date,time,volume_ml\n{1},04/14/2026,09:45,250\n")
            .as("dates=day-first")
            .doubts("do not all stand in one order"),
        Messy.of(
                "the heading tells",
                "filter;Date (dd/mm/yyyy);time;volume_ml\n{1};03/04/2026;09:45;250\n")
            .reads("1 collected=2026-04-03T09:45 volume_ml=250"),
        Messy.of(
                "two figures for the year could be a day",
                "filter;Datum;Zeit;volume_ml\n{1};14.03.26;9:45;250\n")
            .as("Zeit=time")
            .doubts("Which comes first"),
        Messy.of(
                "names of months",
                "filter;date;time;volume_ml\n{1};14 Mar 2026;9h45;250\n{2};15. März 2026;9:45 Uhr;250\n{3};April 3, 2026;09:45:30;250\n")
            .reads(
                "1 collected=2026-03-14T09:45 volume_ml=250",
                "2 collected=2026-03-15T09:45 volume_ml=250",
                "3 collected=2026-04-03T09:45:30 volume_ml=250"),
        Messy.of(
                "day and time in one cell",
                "filter;Probenahme;volume_ml\n{1};14.03.2026 09:45;250\n{2};14.03.2026, 10:00 Uhr;250\n")
            .reads(
                "1 collected=2026-03-14T09:45 volume_ml=250",
                "2 collected=2026-03-14T10:00 volume_ml=250"),
        Messy.of(
                "an ISO time with its offset",
                "filter,collected,volume_ml\n{1},2026-03-14 09:45:00+01:00,250\n")
            .reads("1 collected=2026-03-14T09:45:00+01:00 volume_ml=250"),
        Messy.of(
                "times of the filtration beside a date",
                "filter;date;time;filtered from;filtered to;volume_ml\n{1};2026-03-14;9:45;10:05;10:20;250\n")
            .reads(
                "1 filtered_from=2026-03-14T10:05 filtered_to=2026-03-14T10:20 volume_ml=250 collected=2026-03-14T09:45"),
        Messy.of(
                "9.45 could be decimal hours",
                "filter;date;time;volume_ml\n{1};2026-03-14;9.45;250\n")
            .doubts("no clear time"),
        Messy.of("a day without a time", "filter;date;volume_ml\n{1};2026-03-14;250\n")
            .doubts("no time"),
        Messy.of("a spreadsheet's day number", "filter;collected;volume_ml\n{1};46095.40625;250\n")
            .doubts("no clear day and time"),
        Messy.of("the 31st of February", "filter;date;time;volume_ml\n{1};2026-02-31;09:45;250\n")
            .doubts("is no date"));
  }

  private static List<Messy> headings() {
    return List.of(
        Messy.of(
                "a title above, columns besides",
                "Alder Fork, March storm;;;\n;;;\nFilter-Nr.;Wetter;Menge (ml);Bemerkungen\n{g1};Regen;250;trüb\n")
            .as("Menge (ml)=volume_ml")
            .reads("1 volume_ml=250 remarks=trüb"),
        Messy.of(
                "units on a second line",
                "Filter;Volume;Gauge height;Water temp\n;mL;cm;°C\n{1};250;42;7.5\n")
            .reads("1 volume_ml=250 gauge_m=0.42 water_c=7.5"),
        Messy.of(
                "merged headings over two lines",
                "Filter;Filtration;;Water;\n;from;to;temp (°C);conductivity (µS/cm)\n{1};2026-03-14 10:05;2026-03-14 10:20;7.5;420\n")
            .as("volume_ml=none")
            .reads(
                "1 filtered_from=2026-03-14T10:05 filtered_to=2026-03-14T10:20 water_c=7.5 conductivity_us_cm=420"),
        Messy.of(
                "French",
                "N° filtre;Lieu;Date;Heure;Vol. filtré (mL);Température de l'eau (°C);Remarques\n{1};Gué;14/03/2026;9h45;250,5;7,5;eau trouble\n")
            .reads(
                "1 site=Gué volume_ml=250.5 water_c=7.5 remarks=eau trouble collected=2026-03-14T09:45"),
        Messy.of(
                "a word that could mean something else",
                "filter;temp (°C);volume_ml\n{1};7.5;250\n")
            .doubts("Is \"temp (°C)\" the column water_c"),
        Messy.of("a column that could be a volume", "filter;volume_ml;spill (mL)\n{1};250;20\n")
            .doubts("could be a volume"),
        Messy.of(
                "two columns of one meaning",
                "filter;volume_ml;Volume filtered (mL)\n{1};250;250\n")
            .doubts("both look like volume_ml"),
        Messy.of("no volume at all", "filter;site\n{1};Ford\n")
            .doubts("No column is the filtered volume"),
        Messy.of("the IDs stand under a name nobody knows", "Tüte;volume_ml\n{1};250\n{2};300\n")
            .reads("1 volume_ml=250", "2 volume_ml=300"));
  }

  private static List<Messy> lines() {
    return List.of(
        Messy.of("a sum below", "filter;volume_ml\n{1};250\n{2};300\nSum;550\n")
            .doubts("is no filter ID"),
        Messy.of("a sum below, left out", "filter;volume_ml\n{1};250\n{2};300\nSum;550\n")
            .as("skip=4")
            .reads("1 volume_ml=250", "2 volume_ml=300"),
        Messy.of("a wrong check character", "filter;volume_ml\nK3DF07018;250\n")
            .doubts("is no filter ID"),
        Messy.of(
                "notes below without a filter",
                "filter;volume_ml;remarks\n{1};250;\n;;pump failed at noon\n")
            .doubts("no filter ID"),
        Messy.of(
                "the heading once more on page two",
                "filter;volume_ml\n{1};250\nfilter;volume_ml\n{2};300\n")
            .doubts("is no filter ID"),
        Messy.of(
                "blank lines and blank columns",
                "filter;;volume_ml;;\n\n{1};;250;;\n;;;;\n{2};;300;;\n")
            .reads("1 volume_ml=250", "2 volume_ml=300"));
  }

  private static List<Messy> words() {
    return List.of(
        Messy.of(
                "yes and no in several words",
                "filter;volume_ml;rinsed\n{1};250;ja\n{2};250;x\n{3};250;Nein\n{4};250;\n")
            .reads(
                "1 volume_ml=250 rinse=yes",
                "2 volume_ml=250 rinse=yes",
                "3 volume_ml=250 rinse=no",
                "4 volume_ml=250"),
        Messy.of(
                "a blank of which kind",
                "filter;volume_ml;sample type\n{1};250;FB\n{2};250;blank\n")
            .doubts("could mean several things"),
        Messy.of(
                "torn in another language does not say how",
                "filter;volume_ml;Zustand\n{1};250;gerissen\n{2};250;gut\n")
            .doubts("could mean several things"),
        Messy.of("a formula stays a text", "filter;volume_ml;remarks\n{1};250;=1+1\n")
            .reads("1 volume_ml=250 remarks==1+1"));
  }

  @TestFactory
  Stream<DynamicTest> everyFileComesOutRightOrIsDoubted() {
    assertTrue(files().size() >= 60, "files: " + files().size());
    return files().stream().map(file -> DynamicTest.dynamicTest(file.name(), () -> judge(file)));
  }

  private void judge(Messy messy) throws Exception {
    Path file = Files.createTempFile(folder, "notes", ".csv");
    Files.write(file, messy.bytes());
    Preview preview = new FieldImport(folder).look(file, Answers.parse(messy.answers()));
    List<String> doubts = preview.doubts().stream().map(doubt -> doubt.what().english()).toList();
    assertEquals(messy.doubts().size(), doubts.size(), doubts::toString);
    for (String expected : messy.doubts()) {
      assertTrue(doubts.stream().anyMatch(d -> d.contains(expected)), doubts::toString);
    }
    if (messy.doubts().isEmpty()) {
      assertEquals(
          messy.rows().stream().map(MessyFilesTest::sorted).toList(),
          preview.rows().stream().map(MessyFilesTest::shown).toList());
    }
  }

  private static String shown(Preview.Line row) {
    Map<String, String> cells = new TreeMap<>(row.cells());
    String filter = cells.remove("filter");
    int id = 1;
    while (!List.of(IDS.get(id - 1).text(), IDS.get(id - 1).grouped()).contains(filter)) {
      id++;
    }
    StringBuilder out = new StringBuilder().append(id);
    cells.forEach(
        (column, value) ->
            out.append(' ').append(column).append('=').append(value.replaceAll("\\R", " ")));
    return out.toString();
  }

  /** Columns in order of their names. */
  private static String sorted(String row) {
    String[] parts = row.split(" (?=[a-z_]+=)");
    java.util.Arrays.sort(parts, 1, parts.length);
    return String.join(" ", parts);
  }
}
