package org.siltbench.station.window.connect;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.shell.Screen;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Scale;

/** First run, and whenever a balance is connected. */
public final class ConnectScreen implements Screen {

  private static final Duration EACH_SETTING = Duration.ofSeconds(2);
  private static final Duration EACH_SITUATION = Duration.ofSeconds(8);

  private final Desk desk;
  private final Texts texts;
  private final FindModel find;
  private final GuideModel guide;
  private final RealPane real;
  private final ConnectView view;

  public ConnectScreen(Desk desk) {
    this.desk = desk;
    texts = desk.texts(ConnectScreen.class);
    Balances balances = new Balances(Timebase.system(), desk.lab().folder().resolve("formats"));
    find = new FindModel(desk, PortFacts::all, balances::link, EACH_SETTING);
    LessonModel lesson = new LessonModel(desk, balances::link, EACH_SITUATION);
    guide = new GuideModel(desk);
    real = new RealPane(find, lesson, texts, this::use);
    view = new ConnectView(texts, new GuidePane(guide, texts, () -> desk.go("prepare")), real);
    view.getStylesheets()
        .add(
            Objects.requireNonNull(ConnectScreen.class.getResource("connect.css"))
                .toExternalForm());
  }

  private void use(String spec) {
    try {
      if (Scale.parse(spec) instanceof LinkSpec.Typed) {
        throw new Problem.WrongUse(ConnectSays.TYPED_BY_COMMAND, spec);
      }
      desk.connect(spec);
      desk.notices().show(Notice.note("connect", texts.get("using", spec)));
      desk.go("check");
    } catch (Problem e) {
      desk.notices().show("connect", e);
    }
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public Optional<ScanTaker> scans() {
    return Optional.of(
        new ScanTaker() {
          @Override
          public boolean scanned(BagScan bag) {
            return false;
          }

          @Override
          public boolean scannedOther(String text) {
            boolean meant = real.takeCursor();
            if (meant) {
              desk.notices().show(Notice.note("connect", texts.get("typed.elsewhere")));
            }
            return meant;
          }

          @Override
          public boolean balanceTypes() {
            return real.balanceTypes();
          }
        });
  }

  @Override
  public void shown() {
    find.list();
  }

  @Override
  public boolean oneKey() {
    boolean may = guide.practiceLab() && desk.weighing().running().get().isEmpty();
    if (may) {
      guide.start();
    }
    return may;
  }
}
