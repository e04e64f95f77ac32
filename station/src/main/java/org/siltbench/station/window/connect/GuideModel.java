package org.siltbench.station.window.connect;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.PracticeFolder;
import org.siltbench.station.window.desk.Weighing;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.preweigh.FirstWeighing;
import org.siltbench.station.work.weigh.WeighEvent;

/** The first weighing in five steps, each told by what happens at the pan. */
final class GuideModel implements Weighing.Listener {

  /** The steps; their words are in the texts under {@code step.NAME}. */
  enum Step {
    LOOK,
    PLACE,
    WAIT,
    RECORDED,
    DONE
  }

  private static final String ID = "connect";

  private final Desk desk;
  private final ReadOnlyObjectWrapper<Step> step = new ReadOnlyObjectWrapper<>(Step.LOOK);
  private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

  GuideModel(Desk desk) {
    this.desk = desk;
  }

  ReadOnlyObjectProperty<Step> step() {
    return step.getReadOnlyProperty();
  }

  /** The mass that was recorded, with its place in the ledger. */
  ReadOnlyStringProperty said() {
    return said.getReadOnlyProperty();
  }

  /** True where the practice balance may be used. */
  boolean practiceLab() {
    return desk.lab().practice();
  }

  /** Where the practice lab is, beside this one. */
  Path practiceFolder() {
    return PracticeFolder.beside(desk.lab().folder());
  }

  /** Opens the practice lab in a window beside this one. */
  void openPractice() {
    Path folder = practiceFolder();
    desk.aside()
        .run(
            () -> {
              desk.openPractice(folder);
              return folder;
            },
            opened ->
                desk.notices()
                    .show(
                        Notice.note(
                            ID, desk.texts(GuideModel.class).get("practice.opened", opened))),
            problem -> desk.notices().show(ID, problem));
  }

  /** Connects the practice balance, if it is not there yet, and starts the first weighing. */
  void start() {
    if (desk.balance().filter(live -> live.spec() instanceof LinkSpec.Practice).isEmpty()) {
      desk.connect("practice");
    }
    Optional<LiveBalance> balance = desk.balance();
    step.set(Step.LOOK);
    said.set("");
    desk.work()
        .run(
            () -> FirstWeighing.prepare(desk.lab(), desk.methods()),
            first -> balance.ifPresent(live -> begin(first, live)),
            problem -> desk.notices().show(ID, problem));
  }

  private void begin(FirstWeighing first, LiveBalance balance) {
    desk.changed();
    try {
      desk.weighing()
          .start(
              ID,
              desk.lab(),
              balance,
              first.pans(),
              scale -> first.run(desk.lab(), scale, desk.weighing().heard(this)),
              this);
    } catch (Problem e) {
      desk.notices().show(ID, e);
    }
  }

  @Override
  public void happened(WeighEvent event) {
    if (event instanceof WeighEvent.Place) {
      step.set(Step.PLACE);
    } else if (event instanceof WeighEvent.OnPan pan && pan.event() instanceof PanEvent.Settling) {
      if (step.get() == Step.PLACE) {
        step.set(Step.WAIT);
      }
    } else if (event instanceof WeighEvent.Recorded recorded) {
      said.set(
          desk.texts(GuideModel.class)
              .get("recorded", recorded.measured().grams(), recorded.entry().ref().toString()));
      step.set(Step.RECORDED);
    }
  }

  @Override
  public void ended(@Nullable Problem problem) {
    if (problem != null) {
      step.set(Step.LOOK);
      desk.notices().show(ID, problem);
    } else if (step.get() == Step.RECORDED) {
      step.set(Step.DONE);
    }
  }
}
