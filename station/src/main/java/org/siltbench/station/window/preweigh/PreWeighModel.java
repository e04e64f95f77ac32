package org.siltbench.station.window.preweigh;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Lists;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.desk.Weighing;
import org.siltbench.station.window.override.OverrideModel;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.label.RollPrint;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.preweigh.AfterRecord;
import org.siltbench.station.work.preweigh.CloseBag;
import org.siltbench.station.work.preweigh.PrePlan;
import org.siltbench.station.work.preweigh.PreWeighReport;
import org.siltbench.station.work.preweigh.PreWeighRun;
import org.siltbench.station.work.preweigh.PreWeighSettings;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;

/** A pre-weighing as the screen sees it: what is set up, what to do now, what is on the disk. */
final class PreWeighModel implements Weighing.Listener {

  static final String ID = "preweigh";

  /** What the person does now; the words are in the texts under {@code step.NAME}. */
  enum Step {
    SET_UP,
    STARTING,
    EMPTY_PAN,
    PLACE,
    WAIT,
    TAKE_OFF,
    BAG,
    OVER
  }

  /**
   * A batch to choose.
   *
   * @param name its name
   * @param due how many of its filters need a mass
   */
  record Choice(String name, int due) {}

  private final Desk desk;
  private final Texts texts;
  private final ObservableList<Choice> batches = FXCollections.observableArrayList();
  private final ObservableList<String> weights = FXCollections.observableArrayList();
  private final ObservableList<PreRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Step> step = new ReadOnlyObjectWrapper<>(Step.SET_UP);
  private final ReadOnlyStringWrapper current = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper end = new ReadOnlyStringWrapper("");
  private final ReadOnlyIntegerWrapper done = new ReadOnlyIntegerWrapper();
  private final ReadOnlyIntegerWrapper due = new ReadOnlyIntegerWrapper();
  private @Nullable BagScans bags;

  private final OverrideModel override;

  PreWeighModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(PreWeighModel.class);
    this.override = new OverrideModel(desk);
    desk.changesInFront(ID, this::refresh);
  }

  /** The way out where a check has stopped the run. */
  OverrideModel override() {
    return override;
  }

  ObservableList<Choice> batches() {
    return batches;
  }

  ObservableList<String> weights() {
    return weights;
  }

  /** What happened, newest first. */
  ObservableList<PreRow> rows() {
    return rows;
  }

  ReadOnlyObjectProperty<Step> step() {
    return step.getReadOnlyProperty();
  }

  /** What lies or shall lie on the pan. */
  ReadOnlyStringProperty current() {
    return current.getReadOnlyProperty();
  }

  /** How it ended, in words. */
  ReadOnlyStringProperty end() {
    return end.getReadOnlyProperty();
  }

  ReadOnlyIntegerProperty done() {
    return done.getReadOnlyProperty();
  }

  ReadOnlyIntegerProperty due() {
    return due.getReadOnlyProperty();
  }

  boolean isRunning() {
    return desk.weighing().running().get().equals(ID);
  }

  private record Offer(List<Choice> batches, List<String> weights) {}

  /** Looks what can be chosen; not while a run shows its own. */
  void refresh() {
    if (!isRunning()) {
      desk.work().run(this::look, this::show);
    }
  }

  private Offer look() {
    RegisterView register = desk.lab().register();
    Set<String> codes = new TreeSet<>();
    codes.addAll(register.counts(About.FILTER, Status.PLANNED.code()).keySet());
    codes.addAll(register.counts(About.FILTER, Status.PRE_WEIGHED.code()).keySet());
    List<Choice> open =
        codes.stream()
            .flatMap(code -> Batches.find(register, code).stream())
            .map(batch -> new Choice(batch.name(), due(register, batch)))
            .filter(choice -> choice.due() > 0)
            .toList();
    return new Offer(open, CheckWeight.names(register));
  }

  private int due(RegisterView register, BatchState batch) {
    Method method = desk.methods().inForce(register, batch.method());
    return PrePlan.of(register, batch, method).due().size();
  }

  private void show(Offer offer) {
    Lists.follow(batches, offer.batches());
    Lists.follow(weights, offer.weights());
  }

  /**
   * Starts.
   *
   * @param batch the batch's name
   * @param weight a check weight, or empty
   * @param repeatEvery one in so many is weighed again; 0 for none
   * @param closeBags wait until each bag is scanned closed
   */
  void start(String batch, String weight, int repeatEvery, boolean closeBags) {
    Optional<LiveBalance> balance = desk.balanceOrTell(ID);
    if (balance.isEmpty()) {
      return;
    }
    step.set(Step.STARTING);
    desk.notices().clear(ID);
    desk.work()
        .run(
            () -> PreSetup.of(desk, batch, weight),
            setup -> begin(setup, balance.get(), repeatEvery, closeBags),
            this::failed);
  }

  private void begin(PreSetup setup, LiveBalance balance, int repeatEvery, boolean closeBags) {
    rows.clear();
    done.set(0);
    due.set(setup.due());
    end.set("");
    override.withdraw();
    step.set(Step.EMPTY_PAN);
    bags = closeBags ? new BagScans(this::askBag, this::bagClosed, this::wrongBag) : null;
    try {
      desk.weighing()
          .start(
              ID, desk.lab(), balance, setup.pans(), scale -> run(setup, scale, repeatEvery), this);
    } catch (Problem e) {
      failed(e);
    }
  }

  private void run(PreSetup setup, Scale scale, int repeatEvery) throws InterruptedException {
    PreWeighSettings settings =
        new PreWeighSettings(
            setup.method(), scale.name(), Integer.MAX_VALUE, repeatEvery, null, setup.weight());
    PreWeighRun run =
        new PreWeighRun(
            desk.lab(),
            setup.batch(),
            scale.pan(),
            settings,
            after(setup),
            desk.weighing().heard(this));
    PreWeighReport report = run.run();
    desk.work().onScreen(() -> close(setup, report, run.stoppedByCheck()));
  }

  private AfterRecord after(PreSetup setup) {
    AfterRecord after = AfterRecord.NOTHING;
    String printer = desk.prefs().get(Prefs.Name.PRINTER);
    if (!printer.isEmpty()) {
      RollPrint roll = roll(setup, printer);
      after = after.then((filter, entry, pan) -> print(roll, filter));
    }
    BagScans scans = bags;
    return scans == null ? after : after.then(new CloseBag(desk.lab(), scans));
  }

  private RollPrint roll(PreSetup setup, String printer) {
    return new RollPrint(
        new BagLabels(desk.lab(), setup.batch(), setup.method()),
        printer,
        desk.prefs().get(Prefs.Name.MEDIA),
        Integer.parseInt(desk.prefs().get(Prefs.Name.DPI)),
        new RollPrint.Told() {
          @Override
          public void printed(String filter) {
            desk.work().onScreen(() -> desk.notices().clear("printer"));
          }

          @Override
          public void waits(String filter, Words why, int waiting) {
            desk.work().onScreen(() -> labelWaits(filter, why));
          }
        });
  }

  /** On the printer's own thread: the next mass does not wait for paper. */
  private void print(RollPrint roll, String filter) {
    desk.printing()
        .run(
            () -> {
              roll.print(filter);
              return filter;
            },
            printed -> {});
  }

  private void labelWaits(String filter, Words why) {
    desk.notices()
        .show(
            new Notice(
                "printer",
                Notice.Level.TROUBLE,
                texts.get("label.waits", filter, why),
                texts.get("label.safe"),
                texts.get("label.next")));
  }

  private void askBag(String filter) {
    desk.work()
        .onScreen(
            () -> {
              current.set(filter);
              step.set(Step.BAG);
            });
  }

  private void bagClosed(String filter) {
    desk.work()
        .onScreen(
            () -> {
              desk.notices().clear(ID);
              desk.changed();
            });
  }

  private void wrongBag(Problem.Refused why) {
    desk.work()
        .onScreen(
            () -> {
              desk.notices().show(ID, why);
              desk.cues().give(Cues.Cue.REFUSED);
            });
  }

  /** A bag was scanned; true if the run waits for one. */
  boolean scanned(String text) {
    BagScans scans = bags;
    if (scans == null || step.get() != Step.BAG) {
      return false;
    }
    scans.scanned(text);
    return true;
  }

  @Override
  public void happened(WeighEvent event) {
    if (event instanceof WeighEvent.Place place) {
      current.set(texts.say(place.what().words()));
      step.set(Step.PLACE);
    } else if (event instanceof WeighEvent.TakeOff) {
      step.set(Step.TAKE_OFF);
    } else if (event instanceof WeighEvent.OnPan on && on.event() instanceof PanEvent.Settling) {
      step.set(Step.WAIT);
    } else if (event instanceof WeighEvent.Recorded recorded) {
      recorded(recorded);
    } else if (event instanceof WeighEvent.Declined declined) {
      rows.add(0, new PreRow(PreRow.Kind.REFUSED, declined.what(), "", texts.say(declined.why())));
      desk.notices().show(refused(declined));
      step.set(Step.TAKE_OFF);
    } else if (event instanceof WeighEvent.Warned warned) {
      desk.notices().show(Notice.warning("check", texts.say(warned.what()), ""));
    }
  }

  private Notice refused(WeighEvent.Declined declined) {
    return new Notice(
        ID,
        Notice.Level.REFUSED,
        texts.get("refused", declined.what(), declined.why()),
        texts.get("refused.safe"),
        texts.get("refused.next"));
  }

  private void recorded(WeighEvent.Recorded recorded) {
    Fields data = Fields.of(recorded.entry());
    Optional<String> filter = data.find("filter");
    String purpose = data.text("purpose");
    PreRow.Kind kind =
        filter.isEmpty()
            ? PreRow.Kind.CHECK
            : purpose.equals("repeat") ? PreRow.Kind.REPEAT : PreRow.Kind.MASS;
    String what = filter.orElse(data.text("weight"));
    rows.add(0, new PreRow(kind, what, recorded.measured().grams(), ""));
    desk.notices().clear(ID);
    if (kind == PreRow.Kind.MASS) {
      done.set(done.get() + 1);
    }
    step.set(Step.TAKE_OFF);
  }

  private void close(PreSetup setup, PreWeighReport report, boolean byCheck) {
    if (byCheck) {
      override.look();
    }
    String name = setup.batch().name();
    end.set(
        report.stopped().isEmpty()
            ? texts.get("end", report.weighings().size(), name, report.left())
            : texts.say(report.ended()));
  }

  @Override
  public void ended(@Nullable Problem problem) {
    bags = null;
    current.set("");
    step.set(Step.OVER);
    if (problem != null) {
      desk.notices().show(ID, problem);
    }
    refresh();
  }

  private void failed(Problem problem) {
    step.set(Step.SET_UP);
    desk.notices().show(ID, problem);
  }

  /** Stops; what is recorded stays recorded. */
  void stop() {
    desk.weighing().stop();
  }
}
