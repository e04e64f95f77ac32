package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.link.FakeAdapters;
import org.siltbench.balance.link.TestPty;

/**
 * A USB adapter that comes back under another name. The system's list is played, for ptys are no
 * USB devices; the bytes cross real pseudo-terminals. Every balance here shows a mass of its own,
 * so a mass from the wrong one is seen.
 */
@Timeout(60)
class RenamedAdapterIT {

  private static final String OURS = "+  0.11111 g\r\n";
  private static final String FOREIGN = "+ 22.22222 g\r\n";
  private static final int PRODUCT = 0x5678;

  /** Longer than many tries to come back, which are 0.2 s apart. */
  private static final Duration MANY_TRIES = Duration.ofMillis(1500);

  @TempDir Path folder;

  private final FakeAdapters adapters = new FakeAdapters();
  private TestPty first;
  private ReadingSource source;

  @BeforeEach
  void ours() throws Exception {
    first = new TestPty(folder.resolve("usb0"));
    adapters.plugIn(first.link(), PRODUCT, "A7");
  }

  @AfterEach
  void away() throws Exception {
    source.close();
    first.close();
  }

  private void open() throws Exception {
    source = new LineSource(adapters.link(first.link()), LineFormat.standard(), null, Tap.NONE);
    talk(first, OURS);
    assertEquals(OURS.strip(), nextReading(Duration.ofSeconds(20)));
  }

  /** The rest of a line, a whole line, and the front of one: a live cable. */
  private static void talk(TestPty pty, String line) throws IOException {
    pty.send((line.substring(4) + line + line.substring(0, 6)).getBytes(ISO_8859_1));
  }

  private void pullOut() throws Exception {
    adapters.pullOutAll();
    first.pullOut();
    SourceEvent event = source.next(Duration.ofSeconds(20));
    assertInstanceOf(SourceEvent.Lost.class, event);
  }

  private String nextReading(Duration within) throws InterruptedException {
    SourceEvent event = source.next(within);
    while (event instanceof SourceEvent.Back) {
      event = source.next(within);
    }
    return assertInstanceOf(SourceEvent.Read.class, event).reading().raw();
  }

  private void assertStaysAway() throws InterruptedException {
    assertInstanceOf(SourceEvent.Quiet.class, source.next(MANY_TRIES));
  }

  /** Until the link is back, within two seconds of the return; then its balance talks. */
  private String comesBackAt(TestPty pty) throws Exception {
    long returned = System.nanoTime();
    SourceEvent event = source.next(Duration.ofSeconds(20));
    double seconds = (System.nanoTime() - returned) / 1e9;
    SourceEvent.Back back = assertInstanceOf(SourceEvent.Back.class, event);
    assertEquals(pty.link().toRealPath().toString(), back.where());
    assertTrue(seconds < 2, "back after " + seconds + " s");
    talk(pty, OURS);
    return nextReading(Duration.ofSeconds(20));
  }

  @Test
  void theSameAdapterUnderAnotherNameIsTakenAgainWithinTwoSecondsTimeAfterTime() throws Exception {
    open();
    for (int i = 1; i <= 10; i++) {
      pullOut();
      first = new TestPty(folder.resolve("usb" + i));
      adapters.plugIn(first.link(), PRODUCT, "A7");
      assertEquals(OURS.strip(), comesBackAt(first), "pull " + i);
    }
  }

  @Test
  void anotherAdapterIsNotTakenUnderAnyNameEvenTheOldOne() throws Exception {
    open();
    pullOut();
    try (TestPty sameName = new TestPty(folder.resolve("usb0"));
        TestPty otherName = new TestPty(folder.resolve("usb1"))) {
      adapters.plugIn(sameName.link(), PRODUCT, "B9");
      adapters.plugIn(otherName.link(), PRODUCT + 1, "A7");
      talk(sameName, FOREIGN);
      talk(otherName, FOREIGN);
      assertStaysAway();
      first = new TestPty(folder.resolve("usb2"));
      adapters.plugIn(first.link(), PRODUCT, "A7");
      assertEquals(OURS.strip(), comesBackAt(first));
    }
  }

  @Test
  void aPortThatIsNoAdapterIsNotTakenForOne() throws Exception {
    open();
    pullOut();
    try (TestPty sameName = new TestPty(folder.resolve("usb0"))) {
      talk(sameName, FOREIGN);
      assertStaysAway();
    }
  }

  @Test
  void twoThatSwappedTheirNamesAreToldApart() throws Exception {
    open();
    pullOut();
    try (TestPty sameName = new TestPty(folder.resolve("usb0"))) {
      first = new TestPty(folder.resolve("usb1"));
      adapters.plugIn(sameName.link(), PRODUCT, "B9");
      adapters.plugIn(first.link(), PRODUCT, "A7");
      talk(sameName, FOREIGN);
      assertEquals(OURS.strip(), comesBackAt(first));
    }
  }

  @Test
  void aTwinThatStoodBesideItIsNotTakenForItsReturn() throws Exception {
    try (TestPty twin = new TestPty(folder.resolve("usb1"))) {
      adapters.plugIn(twin.link(), PRODUCT, "A7");
      open();
      pullOut();
      adapters.plugIn(twin.link(), PRODUCT, "A7");
      talk(twin, FOREIGN);
      assertStaysAway();
      first.plugIn();
      adapters.plugIn(first.link(), PRODUCT, "A7");
      assertEquals(OURS.strip(), comesBackAt(first));
    }
  }
}
