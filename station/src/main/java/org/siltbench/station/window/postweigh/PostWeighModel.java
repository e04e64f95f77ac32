package org.siltbench.station.window.postweigh;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Lists;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.desk.Weighing;
import org.siltbench.station.window.override.OverrideModel;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.postweigh.DueDishes;
import org.siltbench.station.work.postweigh.PostWeighReport;
import org.siltbench.station.work.postweigh.PostWeighRun;
import org.siltbench.station.work.postweigh.PostWeighSettings;
import org.siltbench.station.work.postweigh.SeriesPicture;
import org.siltbench.station.work.postweigh.Strictest;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;

/** A post-weighing as the screen sees it: scan, weigh, verdict. */
final class PostWeighModel implements Weighing.Listener {

  static final String ID = "postweigh";

  /** What the person does now; the words are in the texts under {@code step.NAME}. */
  enum Step {
    SET_UP,
    STARTING,
    EMPTY_PAN,
    SCAN,
    BAG_OF_DISH,
    DISH_OF_BAG,
    PLACE,
    WAIT,
    TAKE_OFF,
    DECIDE,
    OVER
  }

  private final Desk desk;
  private final Texts texts;
  private final ObservableList<String> batches = FXCollections.observableArrayList();
  private final ObservableList<String> weights = FXCollections.observableArrayList();
  private final ObservableList<PostRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Step> step = new ReadOnlyObjectWrapper<>(Step.SET_UP);
  private final ReadOnlyObjectWrapper<Optional<Answer>> answer =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper current = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper end = new ReadOnlyStringWrapper("");
  private @Nullable PostScans scans;
  private volatile @Nullable PostWeighRun run;
  private Set<String> dishes = Set.of();
  private Optional<Step> wanted = Optional.empty();
  private boolean both;
  private String surprising = "";
  private String next = "";

  private final OverrideModel override;

  PostWeighModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(PostWeighModel.class);
    this.override = new OverrideModel(desk);
    desk.changesInFront(ID, this::refresh);
  }

  /** The way out where a check has stopped the run. */
  OverrideModel override() {
    return override;
  }

  ObservableList<String> batches() {
    return batches;
  }

  ObservableList<String> weights() {
    return weights;
  }

  ObservableList<PostRow> rows() {
    return rows;
  }

  ReadOnlyObjectProperty<Step> step() {
    return step.getReadOnlyProperty();
  }

  /** What the last weighing came to. */
  ReadOnlyObjectProperty<Optional<Answer>> answer() {
    return answer.getReadOnlyProperty();
  }

  ReadOnlyStringProperty current() {
    return current.getReadOnlyProperty();
  }

  ReadOnlyStringProperty end() {
    return end.getReadOnlyProperty();
  }

  private boolean isRunning() {
    return desk.weighing().running().get().equals(ID);
  }

  private record Offer(List<String> batches, List<String> weights) {}

  void refresh() {
    if (!isRunning()) {
      desk.work()
          .run(
              this::look,
              offer -> {
                Lists.follow(batches, offer.batches());
                Lists.follow(weights, offer.weights());
              });
    }
  }

  /** The batches of which something has been dried. */
  private Offer look() {
    RegisterView register = desk.lab().register();
    List<String> names =
        register.counts(About.FILTER, Status.DRYING.code()).keySet().stream()
            .flatMap(code -> Batches.find(register, code).stream())
            .map(BatchState::name)
            .toList();
    return new Offer(names, CheckWeight.names(register));
  }

  private record SetUp(
      Optional<Set<String>> expected, @Nullable CheckWeight weight, PanSettings pans) {}

  /**
   * Starts.
   *
   * @param batch the batch's name, or empty for any filter of the lab
   * @param weight a check weight, or empty
   * @param askBoth each bag's dish is asked for too
   */
  void start(String batch, String weight, boolean askBoth) {
    both = askBoth;
    Optional<LiveBalance> balance = desk.balanceOrTell(ID);
    if (balance.isEmpty()) {
      return;
    }
    step.set(Step.STARTING);
    desk.notices().clear(ID);
    Optional<String> name = batch.isEmpty() ? Optional.empty() : Optional.of(batch);
    desk.work().run(() -> setUp(name, weight), made -> begin(made, balance.get()), this::failed);
  }

  private SetUp setUp(Optional<String> batch, String weight) {
    RegisterView register = desk.lab().register();
    PanSettings filters = Pans.filters(Strictest.method(register, desk.methods(), batch));
    CheckWeight check = weight.isEmpty() ? null : CheckWeight.named(register, weight);
    return new SetUp(
        Strictest.expected(register, batch),
        check,
        check == null ? filters : Pans.with(filters, check.nominal()));
  }

  private void begin(SetUp made, LiveBalance balance) {
    rows.clear();
    answer.set(Optional.empty());
    end.set("");
    override.withdraw();
    step.set(Step.EMPTY_PAN);
    PostScans fresh = new PostScans(() -> desk.work().onScreen(this::asked));
    scans = fresh;
    try {
      desk.weighing()
          .start(ID, desk.lab(), balance, made.pans(), scale -> run(made, scale, fresh), this);
    } catch (Problem e) {
      failed(e);
    }
  }

  private void run(SetUp made, Scale scale, PostScans from) throws InterruptedException {
    PostWeighSettings settings =
        new PostWeighSettings(
            scale.name(), made.expected(), true, false, both, Set.of(), "", made.weight(), null);
    PostWeighRun started =
        PostWeighRun.of(desk.lab(), desk.methods(), scale.pan(), from, settings, new Told());
    run = started;
    PostWeighReport report = started.run();
    desk.work().onScreen(() -> close(report, started.stoppedByCheck()));
  }

  /** Hears the run on its own thread and brings what it says to the screen's. */
  private final class Told implements PostWeighRun.Listener {
    private final Consumer<WeighEvent> heard = desk.weighing().heard(PostWeighModel.this);

    @Override
    public void accept(WeighEvent event) {
      heard.accept(event);
    }

    @Override
    public void recorded(PostWeighReport.Done done) {
      SeriesPicture series =
          SeriesPicture.of(Filters.require(desk.lab().register(), done.filter()));
      desk.work().onScreen(() -> show(Answer.of(done, series)));
    }

    @Override
    public void hint(String filter, Words text) {
      desk.work().onScreen(() -> desk.notices().show(Notice.note(ID, texts.say(text))));
    }

    @Override
    public void askBag(String filter, String dish) {
      desk.work().onScreen(() -> want(Step.BAG_OF_DISH, texts.get("bag.of.dish", dish, filter)));
    }

    @Override
    public void askDish(String filter, String dish) {
      desk.work().onScreen(() -> want(Step.DISH_OF_BAG, texts.get("dish.of.bag", filter, dish)));
    }

    @Override
    public void surprising(String filter) {
      desk.work()
          .onScreen(
              () -> {
                surprising = filter;
                step.set(Step.DECIDE);
                desk.cues().give(Cues.Cue.ATTENTION);
              });
    }
  }

  private void show(Answer last) {
    answer.set(Optional.of(last));
    String change = last.changeMg().map(mg -> texts.get("change", mg)).orElse("");
    rows.add(0, new PostRow(last.kind(), last.filter(), last.grams(), change));
  }

  private void want(Step other, String text) {
    desk.notices().clear(ID);
    wanted = Optional.of(other);
    current.set(text);
  }

  private void asked() {
    if (wanted.isPresent()) {
      step.set(wanted.get());
      return;
    }
    current.set("");
    PostScans from = scans;
    if (from != null && !next.isEmpty()) {
      String again = next;
      next = "";
      from.scanned(again);
    } else if (step.get() != Step.DECIDE) {
      askForNext(step.get());
    }
  }

  /** The dishes that wait are known before a scan is asked for; meanwhile a bag may have come. */
  private void askForNext(Step before) {
    desk.work()
        .run(
            () -> DueDishes.of(desk.lab().register(), Optional.empty()).names(),
            names -> {
              dishes = names;
              scanNext(before);
            },
            problem -> scanNext(before));
  }

  private void scanNext(Step before) {
    if (step.get() == before) {
      step.set(Step.SCAN);
    }
  }

  /** What is no bag was scanned; what no dish is called is left to others, as a badge is. */
  boolean scannedDish(String text) {
    boolean due = step.get() == Step.SCAN && dishes.contains(text);
    return (due || step.get() == Step.DISH_OF_BAG) && scanned(text);
  }

  /** A bag was scanned; true while a run takes bags. */
  boolean scanned(String text) {
    PostScans from = scans;
    if (from == null || !isRunning()) {
      return false;
    }
    surprising = "";
    wanted = Optional.empty();
    if (!from.scanned(text)) {
      desk.notices().show(Notice.warning(ID, texts.get("not.yet"), texts.get("not.yet.next")));
      desk.cues().give(Cues.Cue.REFUSED);
    }
    return true;
  }

  /** The one decision: the mass just refused is right, and why; weigh the filter once more. */
  boolean decide(String reason) {
    PostWeighRun running = run;
    PostScans from = scans;
    if (surprising.isEmpty() || running == null || from == null) {
      return false;
    }
    try {
      running.accept(surprising, reason);
    } catch (Problem.WrongUse e) {
      desk.notices().show(ID + ".reason", e);
      desk.cues().give(Cues.Cue.ATTENTION);
      return true;
    }
    desk.notices().clear(ID + ".reason");
    next = surprising;
    surprising = "";
    desk.notices().clear(ID);
    step.set(Step.TAKE_OFF);
    if (from.scanned(next)) {
      next = "";
    }
    return true;
  }

  @Override
  public void happened(WeighEvent event) {
    if (event instanceof WeighEvent.Place place) {
      current.set(texts.say(place.what().words()));
      step.set(Step.PLACE);
    } else if (event instanceof WeighEvent.TakeOff && step.get() != Step.DECIDE) {
      step.set(Step.TAKE_OFF);
    } else if (event instanceof WeighEvent.OnPan on && on.event() instanceof PanEvent.Settling) {
      step.set(step.get() == Step.PLACE ? Step.WAIT : step.get());
    } else if (event instanceof WeighEvent.Recorded recorded) {
      recorded(recorded);
    } else if (event instanceof WeighEvent.Declined declined) {
      refused(declined);
    } else if (event instanceof WeighEvent.Warned warned) {
      desk.notices().show(Notice.warning("check", texts.say(warned.what()), ""));
    }
  }

  private void recorded(WeighEvent.Recorded recorded) {
    Fields data = Fields.of(recorded.entry());
    if (data.find("filter").isEmpty()) {
      rows.add(
          0, new PostRow(PostRow.Kind.CHECK, data.text("weight"), recorded.measured().grams(), ""));
    }
    desk.notices().clear(ID);
    step.set(Step.TAKE_OFF);
  }

  private void refused(WeighEvent.Declined declined) {
    rows.add(0, new PostRow(PostRow.Kind.REFUSED, declined.what(), "", texts.say(declined.why())));
    answer.set(Optional.empty());
    desk.notices()
        .show(
            new Notice(
                ID,
                Notice.Level.REFUSED,
                texts.get("refused", declined.what(), declined.why()),
                "",
                ""));
    step.set(declined.measured() == null ? step.get() : Step.TAKE_OFF);
  }

  private void close(PostWeighReport report, boolean byCheck) {
    if (byCheck) {
      override.look();
    }
    end.set(
        report.stopped().isEmpty()
            ? texts.get("end", report.weighings().size(), report.left().size())
            : texts.say(report.ended()));
  }

  @Override
  public void ended(@Nullable Problem problem) {
    scans = null;
    run = null;
    surprising = "";
    next = "";
    wanted = Optional.empty();
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

  /** All bags are weighed: the closing check, then the end. */
  void finish() {
    PostScans from = scans;
    if (from != null) {
      from.end();
    }
  }

  /** Stops at once; what is recorded stays recorded. */
  void stop() {
    desk.weighing().stop();
  }
}
