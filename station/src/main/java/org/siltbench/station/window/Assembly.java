package org.siltbench.station.window;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.people.GuardedLab;
import org.siltbench.station.people.People;
import org.siltbench.station.people.SignedOn;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Doors;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Notices;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.SignOn;
import org.siltbench.station.window.desk.Watch;
import org.siltbench.station.window.desk.Weighing;
import org.siltbench.station.window.desk.Work;
import org.siltbench.station.window.strip.StripModel;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.scan.SerialScanner;
import org.siltbench.station.work.weigh.Scale;

/** Puts the desk together: everything of the window that needs no screen. */
public final class Assembly implements AutoCloseable {

  private static final Duration OPEN_LAB_IDLE = Duration.ofHours(10);
  private static final Duration KNOWN_PEOPLE_IDLE = Duration.ofMinutes(15);

  /**
   * What comes from outside; a test gives its own.
   *
   * @param lab the opened lab, not yet guarded
   * @param people who may work in it
   * @param balances opens balances
   * @param time the clock of their readings
   * @param bench one thread for bench work
   * @param printing one thread for the printer
   * @param runs one thread for runs over the pan
   * @param live a thread for the balance and one for a scanner
   * @param aside a thread for what takes long and touches no ledger
   * @param screen the screen's thread
   * @param sound plays cues
   * @param locale the language
   */
  public record Outside(
      OpenLab lab,
      People people,
      Scale.Opening balances,
      Timebase time,
      Executor bench,
      Executor printing,
      ExecutorService runs,
      Executor live,
      Executor aside,
      Executor screen,
      Cues.Sound sound,
      Locale locale) {}

  private final Outside outside;
  private final Desk desk;
  private final StripModel strip;
  private Consumer<String> scans = text -> {};
  private Consumer<Path> wanted = folder -> {};
  private Runnable again = () -> {};
  private Optional<SerialScanner> scanner = Optional.empty();
  private String scannerPort = "";

  /** Assembles; nothing is opened yet. */
  public Assembly(Outside outside) {
    this.outside = outside;
    OpenLab lab = outside.lab();
    Notices notices = new Notices(outside.locale());
    Work work =
        new Work(outside.bench(), outside.screen(), problem -> notices.show("work", problem));
    Duration idle = outside.people().isOpen() ? OPEN_LAB_IDLE : KNOWN_PEOPLE_IDLE;
    SignOn signOn = new SignOn(outside.people(), new SignedOn(lab.clock(), idle));
    strip = new StripModel(work);
    Weighing weighing = new Weighing(outside.runs(), work, strip::ran);
    desk =
        new Desk(
            new Desk.Parts(
                new GuardedLab(lab, signOn::door),
                signOn,
                Prefs.of(lab.folder()),
                notices,
                work,
                new Work(
                    outside.printing(),
                    outside.screen(),
                    problem -> notices.show("printer", problem)),
                new Work(
                    outside.aside(), outside.screen(), problem -> notices.show("aside", problem)),
                weighing,
                new Cues(outside.sound()),
                outside.locale()));
    desk.doors(
        new Doors() {
          @Override
          public void connect(String spec) {
            Assembly.this.connect(spec);
          }

          @Override
          public void openPractice(Path labFolder) {
            wanted.accept(labFolder);
          }

          @Override
          public void again() {
            again.run();
          }
        });
    weighing.told(event -> strip.told(event, desk));
    strip.follow(desk);
    Watch.over(desk);
    desk.likes().subscribe(this::followScanner);
    followScanner();
  }

  /** The scanner's port is a setting. */
  private void followScanner() {
    String wanted = desk.prefs().get(Prefs.Name.SCANNER);
    if (wanted.equals(scannerPort)) {
      return;
    }
    scannerPort = wanted;
    scanner.ifPresent(SerialScanner::close);
    desk.notices().clear("scanner");
    if (!wanted.isEmpty()) {
      listenTo(wanted);
    }
  }

  private void listenTo(String spec) {
    try {
      LinkSpec port = Scale.parse(spec);
      Balances links = new Balances(outside.time(), outside.lab().folder().resolve("formats"));
      listenTo(() -> links.link(port));
    } catch (Problem e) {
      desk.notices().show("scanner", e);
    }
  }

  /** The desk. */
  public Desk desk() {
    return desk;
  }

  /** The strip's model. */
  public StripModel strip() {
    return strip;
  }

  /** Listens to a balance from now on, in place of the one before. */
  public void connect(String spec) {
    desk.balance().ifPresent(LiveBalance::close);
    LiveBalance live =
        new LiveBalance(Scale.parse(spec), outside.balances(), outside.time(), strip::heard);
    desk.balance(live);
    live.start(outside.live());
    desk.changed();
  }

  /** Who opens a practice lab beside this one. */
  void wanted(Consumer<Path> opener) {
    wanted = opener;
  }

  /** Who closes the window and opens it again. */
  void again(Runnable reopener) {
    again = reopener;
  }

  /** Who takes the scans of a scanner on a port of its own. */
  void scans(Consumer<String> taker) {
    scans = taker;
  }

  /** Listens to a scanner on a port of its own from now on, in place of the one before. */
  private void listenTo(SerialScanner.Opening port) {
    SerialScanner opened =
        new SerialScanner(
            port,
            text -> desk.work().onScreen(() -> scans.accept(text)),
            why -> desk.work().onScreen(() -> scannerAway(why)));
    scanner = Optional.of(opened);
    opened.start(outside.live());
  }

  private void scannerAway(Words why) {
    if (why.isEmpty()) {
      desk.notices().clear("scanner");
    } else {
      desk.notices()
          .show(
              new Notice(
                  "scanner",
                  Notice.Level.TROUBLE,
                  desk.texts(Assembly.class).get("scanner.away", why),
                  desk.texts(Assembly.class).get("scanner.safe"),
                  desk.texts(Assembly.class).get("scanner.next")));
    }
  }

  @Override
  public void close() {
    scanner.ifPresent(SerialScanner::close);
    desk.weighing().stop();
    desk.balance().ifPresent(LiveBalance::close);
    desk.work().close();
    desk.printing().close();
    desk.aside().close();
  }
}
