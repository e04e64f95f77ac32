package org.siltbench.station.window.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Fields;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Lists;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.desk.Weighing;
import org.siltbench.station.window.override.OverrideModel;
import org.siltbench.station.work.check.CheckSheet;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.check.Phase;
import org.siltbench.station.work.check.SingleCheck;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.weigh.WeighEvent;

/** One check weight on the pan: asked for, weighed, judged, and its place on the control chart. */
final class CheckModel implements Weighing.Listener {

  static final String ID = "check";

  /** What the person does now; the words are in the texts under {@code step.NAME}. */
  enum Step {
    CHOOSE,
    EMPTY_PAN,
    PLACE,
    WAIT,
    TAKE_OFF
  }

  /** What the check of this screen said. */
  record Verdict(String weight, boolean pass, String errorMg, String limitMg) {}

  private final Desk desk;
  private final Texts texts;
  private final ObservableList<String> weights = FXCollections.observableArrayList();
  private final ObservableList<String> methods = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Step> step = new ReadOnlyObjectWrapper<>(Step.CHOOSE);
  private final ReadOnlyObjectWrapper<Optional<Verdict>> verdict =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<CheckSheet>> sheet =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final OverrideModel override;
  private String weight = "";

  CheckModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(CheckModel.class);
    this.override = new OverrideModel(desk);
    this.weight = desk.prefs().get(Prefs.Name.WEIGHT);
    desk.changesInFront("check", this::refresh);
  }

  ObservableList<String> weights() {
    return weights;
  }

  ObservableList<String> methods() {
    return methods;
  }

  ReadOnlyObjectProperty<Step> step() {
    return step.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<Verdict>> verdict() {
    return verdict.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<CheckSheet>> sheet() {
    return sheet.getReadOnlyProperty();
  }

  /** The way out where the check is failed or missing. */
  OverrideModel override() {
    return override;
  }

  /** The weight that was used last. */
  String weight() {
    return weight;
  }

  /** Another weight: its own chart is shown. */
  void choose(String name) {
    if (!weight.equals(name)) {
      weight = name;
      refresh();
    }
  }

  private record Looked(List<String> weights, List<String> methods, CheckSheet sheet) {}

  /** Looks again. */
  void refresh() {
    override.look();
    desk.work().run(this::look, this::show);
  }

  private Looked look() {
    var register = desk.lab().register();
    return new Looked(
        CheckWeight.all(register).stream().map(CheckWeight::name).toList(),
        desk.methods().all().stream().map(method -> method.key()).toList(),
        CheckSheet.of(
            register,
            desk.balanceName(),
            weight,
            LocalDate.now(desk.clock()),
            desk.clock().getZone()));
  }

  private void show(Looked now) {
    Lists.follow(weights, now.weights());
    Lists.follow(methods, now.methods());
    sheet.set(Optional.of(now.sheet()));
  }

  boolean isRunning() {
    return desk.weighing().running().get().equals(ID);
  }

  /**
   * Starts.
   *
   * @param name a described weight, or a nominal mass
   * @param method whose limit counts
   */
  void start(String name, Phase phase, String method) {
    Optional<LiveBalance> balance = desk.balanceOrTell(ID);
    if (balance.isEmpty()) {
      return;
    }
    weight = name.strip();
    desk.notices().clear(ID);
    verdict.set(Optional.empty());
    desk.work()
        .run(
            () -> {
              desk.prefs().put(Prefs.Name.WEIGHT, name.strip());
              return SingleCheck.under(desk.lab(), desk.methods(), method, name, phase);
            },
            check -> begin(check, balance.get()),
            this::failed);
  }

  private void begin(SingleCheck check, LiveBalance balance) {
    check
        .warnings(LocalDate.now(desk.clock()))
        .forEach(what -> desk.notices().show(Notice.warning(ID + ".weight", texts.say(what), "")));
    try {
      desk.weighing()
          .start(
              ID,
              desk.lab(),
              balance,
              check.pans(),
              scale -> check.weigh(desk.lab(), scale, desk.weighing().heard(this)),
              this);
      step.set(Step.EMPTY_PAN);
    } catch (Problem e) {
      failed(e);
    }
  }

  /** Stops; a check that is on the disk stays. */
  void stop() {
    if (isRunning()) {
      desk.weighing().stop();
    }
  }

  @Override
  public void happened(WeighEvent event) {
    if (event instanceof WeighEvent.Place) {
      step.set(Step.PLACE);
    } else if (event instanceof WeighEvent.TakeOff) {
      step.set(Step.TAKE_OFF);
    } else if (event instanceof WeighEvent.OnPan pan && pan.event() instanceof PanEvent.Settling) {
      step.set(Step.WAIT);
    } else if (event instanceof WeighEvent.Declined no) {
      desk.notices().show(Notice.warning(ID, texts.say(no.why()), texts.get("try.again")));
    } else if (event instanceof WeighEvent.Recorded recorded) {
      judged(Fields.of(recorded.entry()));
    }
  }

  private void judged(Fields fields) {
    boolean pass = fields.flag("pass");
    verdict.set(
        Optional.of(
            new Verdict(
                fields.text("weight"), pass, fields.text("error_mg"), fields.text("limit_mg"))));
    if (!pass) {
      desk.cues().give(Cues.Cue.ATTENTION);
    }
  }

  @Override
  public void ended(@Nullable Problem problem) {
    step.set(Step.CHOOSE);
    if (problem != null) {
      failed(problem);
    }
  }

  private void failed(Problem problem) {
    step.set(Step.CHOOSE);
    desk.notices().show(ID, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }
}
