package org.siltbench.station.window.today;

import java.util.List;
import java.util.Map;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Lists;
import org.siltbench.station.work.today.Due;
import org.siltbench.station.work.today.DueList;

/** The list of what is due, and where each is done. */
final class TodayModel {

  private static final int SECONDS_BETWEEN_LOOKS = 30;

  private static final Map<Due.What, String> SCREENS =
      Map.of(
          Due.What.CHECK, "check",
          Due.What.POST_WEIGH, "postweigh",
          Due.What.COOLING, "drying",
          Due.What.IN_OVEN, "drying",
          Due.What.DRY, "drying",
          Due.What.DRY_AGAIN, "drying",
          Due.What.PRE_WEIGH, "preweigh",
          Due.What.ISSUE, "prepare",
          Due.What.RECEIVE, "receipt",
          Due.What.RESULTS, "results");

  private final Desk desk;
  private final ObservableList<Due> due = FXCollections.observableArrayList();

  TodayModel(Desk desk) {
    this.desk = desk;
    desk.changesInFront("today", this::refresh);
    desk.seconds().subscribe(this::lookNowAndThen);
  }

  ObservableList<Due> due() {
    return due;
  }

  private void lookNowAndThen(Number seconds) {
    boolean inFront = desk.front().get().equals("today");
    if (inFront && seconds.longValue() % SECONDS_BETWEEN_LOOKS == 0) {
      refresh();
    }
  }

  /** Looks again. */
  void refresh() {
    desk.work()
        .run(() -> DueList.of(desk.lab().register(), desk.balanceName(), desk.clock()), this::show);
  }

  private void show(List<Due> now) {
    Lists.follow(due, now);
  }

  /** Goes where this is done. */
  void open(Due one) {
    desk.go(SCREENS.getOrDefault(one.what(), "today"));
  }
}
