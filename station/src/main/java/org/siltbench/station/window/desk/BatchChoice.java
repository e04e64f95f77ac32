package org.siltbench.station.window.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.scan.BagScan;

/** Which batch a screen is about: the newest, until another is chosen. */
public final class BatchChoice {

  private final Desk desk;
  private final Runnable look;
  private final ObservableList<BatchState> batches = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<BatchState>> batch =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /**
   * A choice among the batches of the lab.
   *
   * @param look looks at the batch chosen, or at what it has become
   */
  public BatchChoice(Desk desk, Runnable look) {
    this.desk = desk;
    this.look = look;
  }

  /** All of them, the newest first. */
  public ObservableList<BatchState> batches() {
    return batches;
  }

  /** The one chosen; empty where there is none. */
  public ReadOnlyObjectProperty<Optional<BatchState>> batch() {
    return batch.getReadOnlyProperty();
  }

  /** Its code, or empty. */
  public String code() {
    return batch.get().map(BatchState::code).orElse("");
  }

  /** Looks again which there are. */
  public void refresh() {
    desk.work().run(() -> newestFirst(Batches.all(desk.lab().register())), this::list);
  }

  private static List<BatchState> newestFirst(List<BatchState> all) {
    List<BatchState> out = new ArrayList<>(all);
    Collections.reverse(out);
    return out;
  }

  private void list(List<BatchState> now) {
    String code = code();
    Lists.follow(batches, now);
    batch.set(
        now.stream()
            .filter(one -> one.code().equals(code))
            .findFirst()
            .or(() -> now.stream().findFirst()));
    look.run();
  }

  /**
   * Chooses one.
   *
   * @return false if it is the one already
   */
  public boolean choose(BatchState one) {
    boolean another = !code().equals(one.code());
    if (another) {
      batch.set(Optional.of(one));
      look.run();
    }
    return another;
  }

  /** The batch that a scanned bag belongs to. */
  public Optional<BatchState> of(BagScan bag) {
    String id = bag.filter().text();
    return batches.stream().filter(one -> one.filters().containsKey(id)).findFirst();
  }
}
