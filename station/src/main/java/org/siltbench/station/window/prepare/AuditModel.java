package org.siltbench.station.window.prepare;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.desk.Weighing;
import org.siltbench.station.work.audit.AuditRun;
import org.siltbench.station.work.audit.BagAudit;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.WeighEvent;

/** Some bags weighed again before the trip: is the right filter in the right bag? */
final class AuditModel implements Weighing.Listener {

  private static final String ID = "prepare";

  /** A bag that was weighed again. */
  record Row(String filter, String grams, String changeMg, boolean agrees) {}

  private record Ready(List<String> ids, Method method, Mass limit) {}

  private final Desk desk;
  private final Texts texts;
  private final Told told;
  private final ReadOnlyObjectProperty<Optional<BatchState>> chosen;
  private final ObservableList<Row> rows = FXCollections.observableArrayList();
  private final ObservableList<String> ids = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper now = new ReadOnlyStringWrapper("");
  final StringProperty limit = new SimpleStringProperty(AuditRun.USUAL_LIMIT_MG);

  AuditModel(Desk desk, ReadOnlyObjectProperty<Optional<BatchState>> chosen) {
    this.desk = desk;
    this.texts = desk.texts(AuditModel.class);
    this.told = new Told(desk);
    this.chosen = chosen;
    chosen.subscribe(batch -> propose());
  }

  ObservableList<Row> rows() {
    return rows;
  }

  /** The bags that will be weighed, by ID. */
  ObservableList<String> ids() {
    return ids;
  }

  /** What is to be done at the pan, in words; empty while nothing runs. */
  ReadOnlyStringProperty now() {
    return now.getReadOnlyProperty();
  }

  /** One bag in ten. */
  void propose() {
    if (isRunning()) {
      return;
    }
    rows.clear();
    ids.clear();
    chosen
        .get()
        .ifPresent(batch -> desk.work().run(() -> BagAudit.sample(desk.lab(), batch), ids::setAll));
  }

  private boolean isRunning() {
    return desk.weighing().running().get().equals(ID);
  }

  boolean bag(BagScan bag) {
    String id = bag.filter().text();
    if (!isRunning() && !ids.remove(id)) {
      ids.add(id);
    }
    return true;
  }

  /** Starts; refused without a balance, or while another run has the pan. */
  void start() {
    told.clear();
    Optional<LiveBalance> balance = desk.balance();
    Optional<BatchState> batch = chosen.get();
    if (balance.isEmpty() || batch.isEmpty() || ids.isEmpty()) {
      String what = balance.isEmpty() ? "balance" : batch.isEmpty() ? "batch" : "bags";
      told.refuse(new Problem.WrongUse(texts.get("no." + what), texts.get("next." + what)));
      return;
    }
    List<String> these = List.copyOf(ids);
    String most = limit.get();
    desk.work()
        .run(
            () ->
                new Ready(
                    these,
                    desk.methods().inForce(desk.lab().register(), batch.get().method()),
                    AuditRun.limit(most)),
            ready -> begin(ready, balance.get()),
            told::refuse);
  }

  private void begin(Ready ready, LiveBalance balance) {
    rows.clear();
    try {
      desk.weighing()
          .start(
              ID,
              desk.lab(),
              balance,
              Pans.filters(ready.method()),
              scale ->
                  AuditRun.of(
                      desk.lab(), scale, ready.ids(), ready.limit(), desk.weighing().heard(this)),
              this);
      now.set(texts.get("audit.empty"));
    } catch (Problem e) {
      told.refuse(e);
    }
  }

  /** Stops; what is recorded stays. */
  void stop() {
    desk.weighing().stop();
  }

  @Override
  public void happened(WeighEvent event) {
    if (event instanceof WeighEvent.Place place) {
      now.set(texts.get("audit.place", place.what().words()));
    } else if (event instanceof WeighEvent.TakeOff) {
      now.set(texts.get("audit.off"));
    } else if (event instanceof WeighEvent.Recorded recorded) {
      Fields data = Fields.of(recorded.entry());
      add(
          new Row(
              data.text("filter"),
              data.text("mass_g"),
              data.text("change_mg"),
              data.flag("agrees")));
    }
  }

  private void add(Row row) {
    rows.add(0, row);
    desk.changed();
    if (row.agrees()) {
      desk.cues().give(Cues.Cue.RECORDED);
    } else {
      desk.cues().give(Cues.Cue.ATTENTION);
      desk.notices()
          .show(
              Notice.warning(
                  Told.ABOUT,
                  texts.get("audit.differs", row.filter(), row.changeMg()),
                  texts.get("audit.differs.next")));
    }
  }

  @Override
  public void ended(@Nullable Problem problem) {
    now.set("");
    if (problem != null) {
      told.refuse(problem);
    } else {
      desk.notices().show(Notice.note(Told.ABOUT + ".audit", texts.get("audit.over", rows.size())));
    }
  }
}
