package org.siltbench.station.window;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Timebase;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.Session;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Notices;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Work;
import org.siltbench.station.window.sound.Tones;

/**
 * The desk of a session, over a lab that is opened later; what the lab has to say becomes notices.
 */
record Opened(LaterLab lab, Assembly assembly, Executor thread, Gate bench)
    implements AutoCloseable {

  static Opened of(Session session, Threads threads, Executor screen, @Nullable String balance) {
    Notes notes = new Notes();
    Setting given = session.setting();
    Path folder = session.labFolder();
    Setting setting =
        new Setting(given.operator(), given.clock(), given.random(), given.subjects(), notes);
    LaterLab lab = new LaterLab(folder, given.clock(), () -> LabFolder.open(folder, setting));
    Gate bench = new Gate(threads.bench());
    Prefs[] prefs = {Prefs.of(lab.folder())}; // the desk's own, as soon as there is a desk
    Assembly assembly =
        new Assembly(
            new Assembly.Outside(
                lab,
                session.people(),
                session.balances(),
                Timebase.system(),
                bench,
                threads.printing(),
                threads.runs(),
                threads.live(),
                threads.live(),
                screen,
                new Tones(
                    threads.sound(), () -> prefs[0].get(Prefs.Name.SOUND).equals("on"), notes),
                locale(prefs[0].get(Prefs.Name.LANGUAGE))));
    prefs[0] = assembly.desk().prefs();
    assembly.wanted(new Beside(given)::open);
    notes.to(assembly);
    listen(assembly, balance == null ? prefs[0].get(Prefs.Name.BALANCE) : balance);
    return new Opened(lab, assembly, threads.bench(), bench);
  }

  /** Opens the lab on the bench's thread, before any bench work; then the screen's goes on. */
  void openLab(Runnable then, Consumer<RuntimeException> otherwise) {
    Work work = assembly.desk().work();
    thread.execute(
        () -> {
          try {
            lab.opened();
            bench.open();
            work.onScreen(then);
          } catch (RuntimeException e) {
            work.onScreen(() -> otherwise.accept(e));
          }
        });
  }

  /** The balance is opened while the toolkit still starts. */
  private static void listen(Assembly assembly, String spec) {
    try {
      if (!spec.isEmpty()) {
        assembly.connect(spec);
      }
    } catch (Problem e) {
      assembly.desk().notices().show("balance", e);
    }
  }

  /** English, unless the person or the computer speaks German. */
  static Locale locale(String chosen) {
    String language = chosen.isEmpty() ? Locale.getDefault().getLanguage() : chosen;
    return language.equals(Locale.GERMAN.getLanguage()) ? Locale.GERMAN : Words.SCREEN_ENGLISH;
  }

  /** Keeps what is said before there is a desk. */
  private static final class Notes implements Consumer<Words> {
    private final Queue<Words> early = new ConcurrentLinkedQueue<>();
    private volatile Consumer<Words> taker = early::add;

    @Override
    public void accept(Words note) {
      taker.accept(note);
    }

    void to(Assembly assembly) {
      Work work = assembly.desk().work();
      Notices notices = assembly.desk().notices();
      Locale language = assembly.desk().locale();
      Consumer<Words> show =
          note -> work.onScreen(() -> notices.show(Notice.note("note", note.in(language))));
      taker = show;
      early.forEach(show);
    }
  }

  @Override
  public void close() {
    assembly.close();
    lab.close();
  }
}
