package org.siltbench.balance.learn;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.Talk;
import org.siltbench.balance.format.LineFormat.Units;
import org.siltbench.balance.format.LineParser;
import org.siltbench.balance.format.Part;
import org.siltbench.balance.format.Terminator;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.learn.Learned.Line;
import org.siltbench.calc.reason.Reason;

/**
 * Infers a line format from captured bytes. It would rather give none than one that could read a
 * wrong mass; what it cannot tell it names.
 */
public final class Learner {

  private final List<Sample> samples;
  private final Hints hints;
  private final List<Reason> findings = new ArrayList<>();
  private final List<Reason> unknown = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();
  private final List<String> others = new ArrayList<>();
  private final List<String> lines = new ArrayList<>();

  private Learner(List<Sample> samples, Hints hints) {
    this.samples = samples;
    this.hints = hints;
  }

  /** Learns what can be learned from the samples. */
  public static Learned learn(List<Sample> samples, Hints hints) {
    return new Learner(List.copyOf(samples), hints).learn();
  }

  private Learned learn() {
    Optional<Terminator> ends = LineEnds.find(samples);
    if (ends.isEmpty()) {
      unknown.add(LearnSays.NO_LINE_END.with());
      return result(null);
    }
    Terminator end = hints.textFile() ? Terminator.ANY : ends.get();
    findings.add(LearnSays.LINES_END.with(name(end)));
    cut(end);
    if (cuts.isEmpty()) {
      unknown.add(LearnSays.NO_NUMBER.with());
      return result(null);
    }
    Optional<Reason> doubt = Doubts.first(cuts);
    if (doubt.isPresent()) {
      unknown.add(doubt.get());
      return result(null);
    }
    return result(format(end));
  }

  private static Object name(Terminator end) {
    return end.text().isEmpty() ? LearnSays.RETURN_OR_FEED.with() : Visible.show(end.text());
  }

  private void cut(Terminator end) {
    for (int i = 0; i < samples.size(); i++) {
      Sample sample = samples.get(i);
      for (String line : LineEnds.cut(sample, end)) {
        lines.add(line);
        Optional<Cut> cut = Cutter.cut(line, sample.situation(), i);
        cut.ifPresentOrElse(cuts::add, () -> others.add(line));
      }
    }
    setStrangersAside();
  }

  /** Where units are used, a line without one counts only if its number is written like theirs. */
  private void setStrangersAside() {
    List<Cut> named = cuts.stream().filter(c -> !c.unit().isEmpty()).toList();
    if (named.isEmpty()) {
      return;
    }
    for (Cut cut : List.copyOf(cuts)) {
      boolean like =
          named.stream().anyMatch(n -> n.decimals() == cut.decimals() && n.point() == cut.point());
      if (cut.unit().isEmpty() && (!like || cut.situation() == Situation.OVER)) {
        cuts.remove(cut);
        others.add(cut.line());
      }
    }
  }

  private @Nullable LineFormat format(Terminator end) {
    boolean anyUnit = cuts.stream().anyMatch(c -> !c.unit().isEmpty());
    if (!anyUnit && hints.unit() == null) {
      unknown.add(LearnSays.NO_UNIT.with());
      return null;
    }
    boolean mayMiss = anyUnit && movingLacksUnit();
    Optional<Reason> capital = mayMiss ? Optional.empty() : Doubts.unit(cuts);
    if (capital.isPresent()) {
      unknown.add(capital.get());
      return null;
    }
    List<Cut> kept =
        anyUnit && !mayMiss ? cuts.stream().filter(c -> !c.unit().isEmpty()).toList() : cuts;
    Optional<Part.Check> check = CheckDigits.find(kept);
    Table table = Table.of(check.isEmpty() ? kept : kept.stream().map(Cut::withoutCheck).toList());
    Optional<Reason> dash = Doubts.dash(table);
    if (dash.isPresent()) {
      unknown.add(dash.get());
      return null;
    }
    Optional<Marks.Found> mark = Marks.find(table);
    if (mark.isPresent() && Marks.inTurn(mark.get().column())) {
      unknown.add(LearnSays.SEVERAL_MASSES.with(quoted(mark.get().column().distinct())));
      return null;
    }
    if (anyUnit && table.cuts().stream().allMatch(c -> c.unit().isEmpty())) {
      unknown.add(LearnSays.UNITS_DIFFER.with());
      return null;
    }
    return verified(build(end, table, mark, check, mayMiss), table);
  }

  /** True if the unit is missing in moving lines only: the unit itself is the stable mark. */
  private boolean movingLacksUnit() {
    if (cuts.stream().noneMatch(c -> c.unit().isEmpty())) {
      return false;
    }
    Motion motion = new Motion(cuts);
    boolean moving = motion.of(i -> cuts.get(i).unit().isEmpty()) == Motion.How.MOVING;
    boolean still = motion.of(i -> !cuts.get(i).unit().isEmpty()) == Motion.How.STILL;
    boolean oneUnit =
        cuts.stream().map(Cut::unit).filter(u -> !u.isEmpty()).distinct().count() == 1;
    if (moving && still && oneUnit) {
      findings.add(LearnSays.UNIT_MARKS_REST.with());
      return true;
    }
    unknown.add(LearnSays.LINES_WITHOUT_UNIT.with());
    return false;
  }

  private LineFormat build(
      Terminator end,
      Table table,
      Optional<Marks.Found> mark,
      Optional<Part.Check> check,
      boolean mayMiss) {
    Assembly assembly = new Assembly(table, mark, check);
    List<Cut> rows = table.cuts();
    boolean anyUnit = !assembly.units().isEmpty();
    char point = rows.stream().anyMatch(c -> c.number().contains(",")) ? ',' : '.';
    NumberShape number =
        new NumberShape(
            point,
            rows.stream().mapToInt(Cut::decimals).min().orElse(0),
            rows.stream().mapToInt(Cut::decimals).max().orElse(0));
    Explanation.of(table, mark, check, number, findings, unknown);
    Talk talk = talk();
    return new LineFormat(
        "learned",
        end,
        assembly.parts(mayMiss),
        assembly.length(),
        number,
        new Units(
            assembly.units(),
            Assembly.supplied(hints.unit(), anyUnit),
            Assembly.missing(mayMiss),
            false),
        assembly.marks(),
        texts(table),
        talk);
  }

  private Talk talk() {
    Talk told = hints.talk();
    if (told != null) {
      return told;
    }
    Optional<Talk.How> how = Manner.of(samples);
    if (how.isEmpty()) {
      unknown.add(LearnSays.NO_MANNER.with());
      return Talk.BY_ITSELF;
    }
    findings.add(Manner.words(how.get()));
    return new Talk(how.get(), "", "");
  }

  private List<MarkText> texts(Table table) {
    OtherLines found = OtherLines.of(others, table.cuts(), overLines());
    findings.addAll(found.findings());
    unknown.addAll(found.unknown());
    return found.rules();
  }

  private List<String> overLines() {
    List<String> out = new ArrayList<>();
    for (Sample sample : samples) {
      if (sample.situation() == Situation.OVER) {
        LineEnds.find(samples).ifPresent(end -> out.addAll(LineEnds.cut(sample, end)));
      }
    }
    return out;
  }

  /** The format, if it reads every line of the table as the table has it. */
  private @Nullable LineFormat verified(LineFormat format, Table table) {
    LineParser parser = format.parser();
    for (Cut cut : table.cuts()) {
      Reading reading = parse(parser, cut.line());
      boolean noMass = reading != null && reading.kind() != Reading.Kind.MASS;
      if (!noMass && (reading == null || !sameNumber(reading, cut))) {
        unknown.add(LearnSays.LINES_DISAGREE.with());
        return null;
      }
    }
    return format;
  }

  private static boolean sameNumber(Reading reading, Cut cut) {
    String shown = (cut.sign() == '-' ? "-" : "") + cut.number().replace(',', '.');
    return new java.math.BigDecimal(shown).compareTo(new java.math.BigDecimal(reading.digits()))
        == 0;
  }

  private static @Nullable Reading parse(LineParser parser, String line) {
    byte[] bytes = line.getBytes(ISO_8859_1);
    return parser.parse(bytes, 0, bytes.length, 0, Instant.EPOCH);
  }

  private static String quoted(Iterable<String> texts) {
    return "'" + String.join("', '", texts) + "'";
  }

  private Learned result(@Nullable LineFormat format) {
    List<Line> out = new ArrayList<>();
    LineParser parser = format == null ? null : format.parser();
    for (String line : lines) {
      Reading reading = parser == null ? null : parse(parser, line);
      Reason why =
          parser == null
              ? LearnSays.NO_FORMAT.with()
              : Objects.requireNonNullElse(parser.reason(), LearnSays.NOTHING_AMISS.with());
      out.add(new Line(line, reading, why));
    }
    return new Learned(format, findings, unknown, out);
  }
}
