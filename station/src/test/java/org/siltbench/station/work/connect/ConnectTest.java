package org.siltbench.station.work.connect;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.format.FormatShelf;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.learn.Learned;
import org.siltbench.balance.learn.Situation;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.LineSettings;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.calc.reason.Reason;
import org.siltbench.station.said.Words;

/** Finding and learning without a command line: what a window is given. */
@Timeout(60)
class ConnectTest {

  private static final Duration SHORT = Duration.ofSeconds(2);
  private static final PortFacts ONE = new PortFacts("/dev/ttyONE", "One", "0403:6001");
  private static final PortFacts TWO = new PortFacts("/dev/ttyTWO", "Two", "");

  @TempDir Path folder;

  private final VirtualTime time = new VirtualTime(Instant.EPOCH);
  private final List<SearchStep> steps = new ArrayList<>();
  private final List<String> sent = new ArrayList<>();

  /** A port on a virtual clock: readable with one line setting, noise with the others. */
  private final class Wire implements Link, Connection {
    private final LinkSpec.Serial spec;
    private final String line;
    private final Deque<Long> at = new ArrayDeque<>();

    Wire(LinkSpec.Serial spec, String line, long... millis) {
      this.spec = spec;
      this.line = line;
      for (long one : millis) {
        at.add(time.nanos() + one * 1_000_000);
      }
    }

    @Override
    public Set<Capability> capabilities() {
      return EnumSet.of(Capability.SENDS);
    }

    @Override
    public String describe() {
      return spec.toString();
    }

    @Override
    public Timebase time() {
      return time;
    }

    @Override
    public Connection connect() {
      return this;
    }

    @Override
    public int read(byte[] into, long atMostNanos) {
      long until = time.nanos() + atMostNanos;
      if (at.isEmpty() || at.peek() > until) {
        time.advanceTo(until);
        return 0;
      }
      time.advanceTo(at.remove());
      byte[] bytes = line.getBytes(ISO_8859_1);
      System.arraycopy(bytes, 0, into, 0, bytes.length);
      return bytes.length;
    }

    @Override
    public void write(byte[] bytes) {
      sent.add(new String(bytes, ISO_8859_1));
    }

    @Override
    public String where() {
      return "wire";
    }

    @Override
    public void close() {}
  }

  private static long[] every(long millis) {
    long[] out = new long[60];
    for (int i = 0; i < out.length; i++) {
      out[i] = (i + 1) * millis;
    }
    return out;
  }

  private BalanceSearch search(List<PortFacts> ports, String line, LineSettings right) {
    return new BalanceSearch(
        () -> ports,
        spec -> {
          LinkSpec.Serial serial = (LinkSpec.Serial) spec;
          if (serial.port().equals(ONE.path())) {
            throw new BalanceException(
                Reason.plain("Cannot open /dev/ttyONE."), Reason.plain("Unplug it."));
          }
          boolean fits = serial.line().equals(right);
          return new Wire(serial, fits ? line : "\u00f8x\u00e6", every(100));
        },
        SHORT,
        steps::add);
  }

  private List<String> evidence() {
    return steps.stream()
        .flatMap(step -> SearchWords.lines(step).stream())
        .map(Words::english)
        .toList();
  }

  @Test
  void aSearchPassesOverAPortThatCannotBeOpenedAndEndsWithTheEvidence() throws Exception {
    LineSettings right = LineSettings.common().get(5);
    BalanceSearch search = search(List.of(ONE, TWO), "ok 0.12345 g\r\n", right);
    SearchEnding.Found found = assertInstanceOf(SearchEnding.Found.class, search.run(null));
    assertEquals("serial:/dev/ttyTWO?baud=2400&bits=7&parity=even", found.spec().toString());
    assertEquals(false, found.needsNoFormat());
    assertTrue(evidence().contains("Cannot open /dev/ttyONE. Passed over."), evidence()::toString);
    assertTrue(evidence().contains("2400 7E1: readable: ok 0.12345 g"), evidence()::toString);
    SearchStep.Heard last = (SearchStep.Heard) steps.get(steps.size() - 1);
    assertTrue(last.tried() <= last.atMost() && last.atMost() == LineSettings.common().size());
    assertEquals(List.of(), sent);
  }

  @Test
  void linesThatReadAsTheyAreNeedNoLesson() throws Exception {
    BalanceSearch search = search(List.of(TWO), "+  0.12345 g\r\n", LineSettings.DEFAULT);
    assertTrue(((SearchEnding.Found) search.run(null)).needsNoFormat());
  }

  @Test
  void everyEndingHasItsSentences() throws Exception {
    assertInstanceOf(SearchEnding.NoPort.class, search(List.of(), "", null).run(null));
    assertInstanceOf(SearchEnding.NoneOpened.class, search(List.of(ONE), "", null).run(null));
    assertInstanceOf(SearchEnding.Unreadable.class, search(List.of(TWO), "", null).run(null));
    assertThrows(BalanceException.class, () -> search(List.of(), "", null).run(ONE.spec()));
    for (SearchEnding one :
        List.of(
            new SearchEnding.NoPort(),
            new SearchEnding.Silent(),
            new SearchEnding.Cancelled(),
            new SearchEnding.NoneOpened(),
            new SearchEnding.Unreadable())) {
      String text = String.join(" ", SearchWords.lines(one).stream().map(Words::english).toList());
      assertTrue(text.matches("[A-Z].*\\."), text);
    }
  }

  @Test
  void aSearchCanBeStoppedWhileItListens() throws Exception {
    BalanceSearch[] search = new BalanceSearch[1];
    search[0] =
        new BalanceSearch(
            () -> List.of(TWO),
            spec -> new Wire((LinkSpec.Serial) spec, "\u00f8"),
            SHORT,
            step -> {
              steps.add(step);
              if (step instanceof SearchStep.Heard) {
                search[0].cancel();
              }
            });
    assertInstanceOf(SearchEnding.Cancelled.class, search[0].run(null));
    assertEquals(1, search[0].tried().size());
  }

  private FormatLesson lesson(String line, long... millis) throws IOException {
    return FormatLesson.begin(
        LinkSpec.parse("serial:/dev/ttyTWO"),
        spec -> new Wire((LinkSpec.Serial) spec, line, millis),
        text -> {});
  }

  @Test
  void aLessonTellsHowFarItIsAndShowsTheEvidence() throws Exception {
    List<Double> parts = new ArrayList<>();
    try (FormatLesson lesson = lesson("ok,  0.12345 g\r\n", every(100))) {
      lesson.listen(Situation.LOAD, Duration.ofSeconds(4), parts::add);
      Learned learned = lesson.learn().named("mine");
      List<String> shown = LessonWords.evidence(learned).stream().map(Words::english).toList();
      assertEquals("ok,  0.12345 g   ->   0.12345 g", shown.get(0));
      assertTrue(shown.contains("The unit is 'g'."), shown::toString);
      assertTrue(shown.contains("It talks by itself: the lines come steadily."), shown::toString);
      Path saved = FormatLesson.save(learned, "mine", folder);
      assertTrue(Files.readString(saved).contains("name: mine"));
      assertNotNull(new FormatShelf(folder).load("mine"));
    }
    assertTrue(parts.size() > 4 && parts.get(0) < 0.2, parts::toString);
    assertEquals(parts.stream().sorted().toList(), parts);
  }

  @Test
  void singleLinesWithSilenceBetweenAreThoseOfAKey() throws Exception {
    try (FormatLesson lesson = lesson("ok,  0.12345 g\r\n", 600, 1900, 2700, 5100)) {
      lesson.listen(Situation.LOAD, Duration.ofSeconds(8));
      Learned learned = lesson.learn();
      assertEquals(
          LineFormat.Talk.How.ON_KEY, assertNotNullFormat(learned).talk().how(), learned::toString);
    }
  }

  @Test
  void oneSteadyLineEveryTwoSecondsIsNoKey() throws Exception {
    try (FormatLesson lesson = lesson("ok,  0.12345 g\r\n", every(2000))) {
      lesson.listen(Situation.LOAD, Duration.ofSeconds(12));
      Learned learned = lesson.learn();
      assertEquals(LineFormat.Talk.How.BY_ITSELF, assertNotNullFormat(learned).talk().how());
      assertTrue(
          learned.unknown().stream().noneMatch(u -> u.startsWith("whether")), learned::toString);
    }
  }

  @Test
  void whatCannotBeToldStaysUnknown() throws Exception {
    try (FormatLesson lesson = lesson("ok,  0.12345 g\r\n", 100, 3000, 3050)) {
      lesson.listen(Situation.LOAD, Duration.ofSeconds(4));
      assertTrue(
          lesson
              .learn()
              .unknown()
              .contains("whether it talks by itself, on its key, or when asked"));
    }
  }

  @Test
  void aLessonCanBeStoppedAndKeepsWhatCame() throws Exception {
    FormatLesson[] kept = new FormatLesson[1];
    try (FormatLesson lesson =
        FormatLesson.begin(
            LinkSpec.parse("practice?seed=4"),
            new Balances(time, folder)::link,
            text -> kept[0].cancel())) {
      kept[0] = lesson;
      assertTrue(lesson.listen(Situation.UNKNOWN, Duration.ofHours(1)).text().length() < 4096);
    }
  }

  @Test
  void aLessonAfterASearchWaitsForAPortThatIsSlowToOpenAgainButNotForEver() throws Exception {
    int[] away = {3};
    FormatLesson.Opener opener =
        spec -> {
          if (away[0]-- > 0) {
            throw new BalanceException(
                Reason.plain("There is no port /dev/ttyTWO."), Reason.plain("Check the cable."));
          }
          return new Wire((LinkSpec.Serial) spec, "ok,  0.12345 g\r\n", every(100));
        };
    FormatLesson.beginAgain(TWO.spec(), opener, text -> {}).close();
    assertEquals(-1, away[0]);
    away[0] = Integer.MAX_VALUE;
    assertThrows(
        BalanceException.class, () -> FormatLesson.beginAgain(TWO.spec(), opener, text -> {}));
  }

  private static LineFormat assertNotNullFormat(Learned learned) {
    LineFormat format = learned.format();
    assertNotNull(format, learned::toString);
    return format;
  }
}
