package org.siltbench.balance.learn;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineParser;

/** The learner on formats drawn from a grammar, another seed each run. */
class LearnerCorpusTest {

  private static final int FORMATS = 150;

  /** How one format was learned. */
  private record Outcome(boolean right, List<String> wrong, String story) {}

  @Test
  void shownEverySituationItIsRightOnNearlyAllAndNeverReadsAWrongMass() {
    judge(System.nanoTime(), FORMATS, true, 0.98);
  }

  @Test
  void fromAnUnlabelledStreamItIsRightOnNearlyAllAndNeverReadsAWrongMass() {
    judge(System.nanoTime(), FORMATS, false, 0.98);
  }

  @Test
  @Tag("long")
  void tenThousandFormats() {
    judge(System.nanoTime(), 10_000, true, 0.98);
    judge(System.nanoTime(), 10_000, false, 0.98);
  }

  @Test
  void fromThreeLinesItNeverReadsAWrongMass() {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    int usable = 0;
    for (int i = 0; i < 2 * FORMATS; i++) {
      InventedFormat invented = new InventedFormat(random);
      StringBuilder text = new StringBuilder();
      double mass = random.nextDouble(0.01, 0.9);
      for (int k = 0; k < 3; k++) {
        text.append(invented.line(invented.shown(mass), false)).append(invented.end);
      }
      Sample three = new Sample(Situation.UNKNOWN, text.toString(), true);
      LineFormat format = Learner.learn(List.of(three), Hints.NONE).format();
      usable += format == null ? 0 : 1;
      assertEquals(
          List.of(),
          format == null ? List.of() : wrong(format, invented, random),
          "seed " + seed + ", " + invented);
    }
    assertTrue(usable > FORMATS, "seed " + seed + ": only " + usable + " could be used");
  }

  private static void judge(long seed, int count, boolean labelled, double share) {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> failures = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      InventedFormat invented = new InventedFormat(random);
      Outcome outcome = learn(invented, random, labelled);
      assertEquals(List.of(), outcome.wrong(), "seed " + seed + ", " + invented);
      if (!outcome.right()) {
        failures.add(outcome.story());
      }
    }
    double right = 1 - (double) failures.size() / count;
    assertTrue(right >= share, "seed " + seed + ": right on " + right + "\n" + failures);
  }

  private static Outcome learn(InventedFormat invented, SplittableRandom random, boolean labelled) {
    List<Sample> shown = labelled ? situations(invented, random) : stream(invented, random);
    Learned learned = Learner.learn(shown, Hints.NONE);
    LineFormat format = learned.format();
    if (format == null) {
      return new Outcome(false, List.of(), invented + " -> " + learned.unknown());
    }
    List<String> wrong = wrong(format, invented, random);
    String missed = missed(format, invented, random);
    return new Outcome(
        missed.isEmpty(),
        wrong,
        invented + " -> " + missed + learned.unknown() + learned.findings());
  }

  private static List<Sample> situations(InventedFormat f, SplittableRandom random) {
    return List.of(
        Sample.of(Situation.EMPTY, rest(f, random, 0, 8)),
        Sample.of(Situation.LOAD, rest(f, random, 0.1 + random.nextDouble(), 8)),
        Sample.of(Situation.MOVING, moving(f, random, 12)),
        Sample.of(
            Situation.OVER, f.overLine() + f.end + f.overLine() + f.end + f.overLine() + f.end));
  }

  private static List<Sample> stream(InventedFormat f, SplittableRandom random) {
    return List.of(
        Sample.of(
            Situation.UNKNOWN,
            rest(f, random, 0, 10)
                + moving(f, random, 10)
                + rest(f, random, 0.1 + random.nextDouble(), 10)
                + moving(f, random, 10)
                + rest(f, random, 12.3 * random.nextDouble(), 10)));
  }

  private static String rest(InventedFormat f, SplittableRandom random, double grams, int lines) {
    StringBuilder out = new StringBuilder();
    double step = Math.pow(10, -f.decimals) * (f.unitScale == 6 ? 1e-3 : 1);
    for (int i = 0; i < lines; i++) {
      double flicker = (i % 3 - 1) * step * 1.01;
      out.append(f.line(f.shown(grams + (grams == 0 ? flicker : 0)), false)).append(f.end);
    }
    return out.toString();
  }

  private static String moving(InventedFormat f, SplittableRandom random, int lines) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < lines; i++) {
      out.append(f.line(f.shown(random.nextDouble(-2, 9)), true)).append(f.end);
    }
    return out.toString();
  }

  private static Reading parse(LineParser parser, String line) {
    byte[] bytes = line.getBytes(ISO_8859_1);
    return parser.parse(bytes, 0, bytes.length, 0, Instant.EPOCH);
  }

  /** Fresh lines that were read with another mass than was written. */
  private static List<String> wrong(LineFormat format, InventedFormat f, SplittableRandom random) {
    List<String> out = new ArrayList<>();
    LineParser parser = format.parser();
    for (int i = 0; i < 200; i++) {
      long mass = f.shown(random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-3, 3)));
      String line = f.line(mass, random.nextBoolean());
      Reading reading = parse(parser, line);
      boolean isMass = reading != null && reading.kind() == Reading.Kind.MASS;
      if (isMass && reading.mass().nanograms() != mass) {
        out.add(line + " read as " + reading.mass());
      }
    }
    Reading over = parse(parser, f.overLine());
    if (over != null && over.kind() == Reading.Kind.MASS) {
      out.add(f.overLine() + " read as " + over.mass());
    }
    return out;
  }

  /** What of number, sign, unit and mark is not right on fresh lines of the usual range. */
  private static String missed(LineFormat format, InventedFormat f, SplittableRandom random) {
    LineParser parser = format.parser();
    for (int i = 0; i < 100; i++) {
      boolean moves = random.nextBoolean();
      long mass = f.shown(random.nextDouble(-2, 9));
      String line = f.line(mass, moves);
      Reading reading = parse(parser, line);
      if (reading == null || reading.kind() != Reading.Kind.MASS) {
        return "not read: [" + line + "] " + parser.why();
      }
      Reading.Mark wanted =
          !f.hasMark() ? Reading.Mark.NONE : moves ? Reading.Mark.MOVING : Reading.Mark.STABLE;
      boolean unitMark = f.markPlace == InventedFormat.MarkPlace.UNIT_MISSING;
      if (reading.mark() != wanted
          && !(unitMark && !moves && reading.mark() == Reading.Mark.NONE)) {
        return "mark " + reading.mark() + " in [" + line + "]";
      }
    }
    return "";
  }
}
