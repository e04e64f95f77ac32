package org.siltbench.station.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Labs;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.Draft;

class PeopleTest {

  @TempDir Path folder;
  private final Hand clock = new Hand();
  private People people;

  /** A clock that is moved by hand. */
  private static final class Hand extends Clock {
    private Instant now = Instant.parse("2026-03-02T08:00:00Z");

    void pass(Duration time) {
      now = now.plus(time);
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  private People people() {
    if (people == null) {
      people = new People(folder, clock, new Random(1));
    }
    return people;
  }

  private static char[] pin(String text) {
    return text.toCharArray();
  }

  @Test
  void aLabIsOpenUntilThereIsASupervisor() {
    assertTrue(people().isOpen());
    assertThrows(Problem.Refused.class, () -> people().put("AB", Right.WEIGH, pin("1234"), ""));
    people().put("su", Right.SUPERVISE, pin("9876"), "");
    assertFalse(people().isOpen());
    people().put("AB", Right.WEIGH, pin("1234"), "");
    assertEquals(
        List.of(new Person("AB", Right.WEIGH), new Person("SU", Right.SUPERVISE)), people().all());
    assertThrows(Problem.Refused.class, () -> people().remove("SU"), "somebody has to supervise");
    assertEquals(new Person("AB", Right.WEIGH), people().signOn(" ab ", pin("1234")));
  }

  @Test
  void wrongPinsMakeTheNextTryWaitLonger() {
    people().put("SU", Right.SUPERVISE, pin("9876"), "");
    for (int i = 0; i < 3; i++) {
      Problem wrong = assertThrows(Problem.Refused.class, () -> people().signOn("SU", pin("0000")));
      assertTrue(wrong.what().contains("wrong PIN"));
    }
    Problem wait = assertThrows(Problem.Refused.class, () -> people().signOn("SU", pin("9876")));
    assertEquals("Wait 5 seconds, then try again.", wait.next());
    clock.pass(Duration.ofSeconds(6));
    assertThrows(Problem.Refused.class, () -> people().signOn("SU", pin("0000")));
    Problem longer = assertThrows(Problem.Refused.class, () -> people().signOn("SU", pin("9876")));
    assertEquals("Wait 10 seconds, then try again.", longer.next());
    clock.pass(Duration.ofSeconds(11));
    people().signOn("SU", pin("9876"));
    assertThrows(Problem.Refused.class, () -> people().signOn("SU", pin("0000")));
    people().signOn("SU", pin("9876"));
  }

  @Test
  void thePinIsNotInTheFileAndTheFileIsForItsOwnerOnly() throws Exception {
    people().put("SU", Right.SUPERVISE, pin("73519"), "BADGE-4711");
    Path file = folder.resolve("people.json");
    String text = Files.readString(file);
    assertFalse(text.contains("73519"));
    assertFalse(text.contains("4711"));
    assertEquals(PosixFilePermissions.fromString("rw-------"), Files.getPosixFilePermissions(file));
  }

  @Test
  void aBadgeSaysWhoAndThePinIsStillAsked() {
    people().put("SU", Right.SUPERVISE, pin("9876"), "BADGE-1");
    people().put("AB", Right.WEIGH, pin("1234"), "BADGE-2");
    assertEquals(Optional.of("AB"), people().ofBadge("BADGE-2\r\n"));
    assertEquals(Optional.empty(), people().ofBadge("BADGE-3"));
  }

  @Test
  void someoneSignedOnIsSignedOffWhenNothingWasDone() {
    SignedOn screen = new SignedOn(clock, Duration.ofMinutes(10));
    Person person = new Person("AB", Right.WEIGH);
    screen.on(person);
    clock.pass(Duration.ofMinutes(9));
    screen.touch();
    clock.pass(Duration.ofMinutes(9));
    assertEquals(Optional.of(person), screen.current());
    clock.pass(Duration.ofMinutes(2));
    assertEquals(Optional.empty(), screen.current());
  }

  @Test
  void onlyThoseWhoMayDoRecordAndRelease() {
    Path lab = folder.resolve("lab");
    try (OpenLab open = new Labs(1).create(lab)) {
      Draft release = new Draft("release", 1, true, Map.of("batch", "B1"));
      Draft overridden = new Draft("weighing", 1, true, Map.of("filter", "F", "override", true));
      OpenLab reader = new GuardedLab(open, () -> new Person("RR", Right.READ));
      OpenLab weigher = new GuardedLab(open, () -> new Person("AB", Right.WEIGH));
      OpenLab supervisor = new GuardedLab(open, () -> new Person("SU", Right.SUPERVISE));
      Draft weighing = Labs.weighing("F", "0.1");
      assertThrows(Problem.Refused.class, () -> reader.act(view -> List.of(weighing)));
      weigher.act(view -> List.of(weighing));
      assertThrows(Problem.Refused.class, () -> weigher.act(view -> List.of(release)));
      assertThrows(Problem.Refused.class, () -> weigher.act(view -> List.of(overridden)));
      supervisor.act(view -> List.of(release, overridden));
      assertEquals(4, open.ledgers().get(open.code()).seq());
    }
  }

  @Test
  void aDamagedFileLetsNobodyInAndSaysSo() throws Exception {
    Files.writeString(folder.resolve("people.json"), "{\"people\":[{\"initials\":3}]}");
    assertThrows(Problem.Outside.class, () -> people().isOpen());
  }

  /** RFC 9106, section 5.3: the Argon2id test vector, against the library used here. */
  @Test
  void theLibraryMakesThePublishedHash() {
    byte[] password = filled(32, 1);
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(32)
            .withIterations(3)
            .withParallelism(4)
            .withSalt(filled(16, 2))
            .withSecret(filled(8, 3))
            .withAdditional(filled(12, 4))
            .build());
    byte[] hash = new byte[32];
    generator.generateBytes(password, hash);
    assertEquals(
        "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659",
        java.util.HexFormat.of().formatHex(hash));
  }

  private static byte[] filled(int length, int value) {
    byte[] bytes = new byte[length];
    java.util.Arrays.fill(bytes, (byte) value);
    return bytes;
  }
}
