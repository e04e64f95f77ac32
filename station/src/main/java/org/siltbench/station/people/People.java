package org.siltbench.station.people;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.siltbench.station.Problem;

/**
 * The people of one lab folder. Without a supervisor the lab is open: everybody may do everything.
 * Wrong PINs make the next try wait, longer each time.
 */
public final class People {

  private static final int FREE_TRIES = 3;
  private static final long LONGEST_WAIT = 15 * 60_000L;

  private final PeopleFile file;
  private final Clock clock;
  private final RandomGenerator random;

  /** The people of a lab folder. */
  public People(Path folder, Clock clock, RandomGenerator random) {
    this.file = new PeopleFile(folder);
    this.clock = clock;
    this.random = random;
  }

  /** True if nobody has to sign on. */
  public boolean isOpen() {
    return file.read().values().stream().noneMatch(kept -> kept.right() == Right.SUPERVISE);
  }

  /** Everybody, by initials. */
  public List<Person> all() {
    return file.read().values().stream()
        .map(kept -> new Person(kept.initials(), kept.right()))
        .toList();
  }

  /**
   * Registers a person, or gives a registered one another right, PIN or badge.
   *
   * @param badge text of a badge to scan, or empty
   */
  public void put(String initials, Right right, char[] pin, String badge) {
    String name = named(initials);
    if (pin.length < 4 || pin.length > 64) {
      throw new Problem.WrongUse(PeopleSays.PIN_LENGTH);
    }
    String hash = PinHash.of(pin, random);
    String badgeHash = badge.isBlank() ? "" : PinHash.of(badge.strip().toCharArray(), random);
    file.change(
        people -> {
          people.put(name, new PeopleFile.Kept(name, right, hash, badgeHash, 0, 0));
          keepASupervisor(people, right != Right.SUPERVISE);
        });
  }

  /** Takes a person off the list. What they recorded stays theirs. */
  public void remove(String initials) {
    String name = named(initials);
    file.change(
        people -> {
          if (people.remove(name) == null) {
            throw new Problem.Refused(PeopleSays.NOBODY, name);
          }
          keepASupervisor(people, !people.isEmpty());
        });
  }

  private static void keepASupervisor(Map<String, PeopleFile.Kept> people, boolean asked) {
    boolean none = people.values().stream().noneMatch(kept -> kept.right() == Right.SUPERVISE);
    if (asked && none) {
      throw new Problem.Refused(PeopleSays.NO_SUPERVISOR_LEFT);
    }
  }

  /**
   * Lets a person in.
   *
   * @throws Problem.Refused if the PIN is wrong, the person is unknown or has to wait
   */
  public Person signOn(String initials, char[] pin) {
    String name = named(initials);
    PeopleFile.Kept kept = file.read().get(name);
    if (kept == null) {
      PinHash.of(pin, random); // as slow as a known name, so that names cannot be guessed
      throw refused(name);
    }
    long wait = wait(kept);
    if (wait > 0) {
      throw new Problem.Refused(PeopleSays.TOO_MANY_PINS, kept.failed(), name, (wait + 999) / 1000);
    }
    boolean right = PinHash.fits(pin, kept.pin());
    if (!right || kept.failed() > 0) {
      file.change(people -> people.computeIfPresent(name, (n, now) -> counted(now, right)));
    }
    if (!right) {
      throw refused(name);
    }
    return new Person(name, kept.right());
  }

  private PeopleFile.Kept counted(PeopleFile.Kept kept, boolean right) {
    return right ? kept.failed(0, 0) : kept.failed(kept.failed() + 1, clock.millis());
  }

  private long wait(PeopleFile.Kept kept) {
    if (kept.failed() < FREE_TRIES) {
      return 0;
    }
    long wait = Math.min(LONGEST_WAIT, 5_000L << Math.min(20, kept.failed() - FREE_TRIES));
    long since = Math.abs(clock.millis() - kept.failedAt());
    return Math.max(0, wait - since);
  }

  /** Whose badge this is: the person still gives the PIN. */
  public Optional<String> ofBadge(String scanned) {
    char[] text = scanned.strip().toCharArray();
    if (text.length == 0 || text.length > 200) {
      return Optional.empty();
    }
    return file.read().values().stream()
        .filter(kept -> !kept.badge().isEmpty() && PinHash.fits(text, kept.badge()))
        .map(PeopleFile.Kept::initials)
        .findFirst();
  }

  private static Problem.Refused refused(String name) {
    return new Problem.Refused(PeopleSays.NOT_LET_IN, name);
  }

  /** The initials as they are kept: without blanks around, in capitals. */
  public static String named(String initials) {
    String name = initials.strip().toUpperCase(Locale.ROOT);
    int bytes = name.getBytes(StandardCharsets.UTF_8).length;
    if (bytes == 0 || bytes > 40 || name.chars().anyMatch(c -> c < ' ')) {
      throw new Problem.WrongUse(PeopleSays.NO_INITIALS);
    }
    return name;
  }
}
