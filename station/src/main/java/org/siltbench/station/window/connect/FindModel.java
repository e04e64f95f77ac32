package org.siltbench.station.window.connect;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.work.connect.BalanceSearch;
import org.siltbench.station.work.connect.FormatLesson;
import org.siltbench.station.work.connect.SearchEnding;
import org.siltbench.station.work.connect.SearchStep;
import org.siltbench.station.work.connect.SearchWords;
import org.siltbench.station.work.weigh.Scale;

/** Looks for a balance on the ports. It sends nothing; only a text to ask with would be sent. */
final class FindModel {

  /** How the search stands. */
  enum State {
    IDLE,
    SEARCHING,
    NOTHING,
    READS,
    NEEDS_FORMAT
  }

  private final Desk desk;
  private final Supplier<List<PortFacts>> ports;
  private final FormatLesson.Opener links;
  private final Duration each;
  private final ObservableList<PortFacts> listed = FXCollections.observableArrayList();
  private final ObservableList<String> evidence = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.IDLE);
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
  private final ReadOnlyStringWrapper found = new ReadOnlyStringWrapper("");
  private @Nullable BalanceSearch running;

  FindModel(Desk desk, Supplier<List<PortFacts>> ports, FormatLesson.Opener links, Duration each) {
    this.desk = desk;
    this.ports = ports;
    this.links = links;
    this.each = each;
  }

  ObservableList<PortFacts> ports() {
    return listed;
  }

  /** What was heard, line by line, as the command line shows it. */
  ObservableList<String> evidence() {
    return evidence;
  }

  ReadOnlyObjectProperty<State> state() {
    return state.getReadOnlyProperty();
  }

  /** From 0 to 1 on the port that is tried now. */
  ReadOnlyDoubleProperty progress() {
    return progress.getReadOnlyProperty();
  }

  /** The balance text that gave readable lines. */
  ReadOnlyStringProperty found() {
    return found.getReadOnlyProperty();
  }

  /** Lists the ports; opens none. */
  void list() {
    desk.aside().run(ports, listed::setAll);
  }

  /** Searches one port, or all of them where none is named. */
  void search(String only) {
    if (state.get() == State.SEARCHING) {
      return;
    }
    LinkSpec spec = parsed(only);
    if (spec == null && !only.isBlank()) {
      return;
    }
    evidence.clear();
    found.set("");
    progress.set(0);
    state.set(State.SEARCHING);
    BalanceSearch search =
        new BalanceSearch(
            ports, links::link, each, step -> desk.work().onScreen(() -> heard(step)));
    running = search;
    desk.aside().run(() -> run(search, spec), this::ended, this::failed);
  }

  private @Nullable LinkSpec parsed(String text) {
    try {
      return text.isBlank() ? null : Scale.parse(text.strip());
    } catch (Problem e) {
      desk.notices().show("connect", e);
      return null;
    }
  }

  private static SearchEnding run(BalanceSearch search, @Nullable LinkSpec only) {
    try {
      return search.run(only);
    } catch (IOException e) {
      throw away(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new SearchEnding.Cancelled();
    }
  }

  /** Told as what it is: nothing was sent, and what to look at. */
  static Problem.Outside away(IOException e) {
    return e instanceof BalanceException known
        ? new Problem.Outside(
            e, ConnectSays.FIND_STOPPED, Elsewhere.words(e), Elsewhere.words(known.wayOut()))
        : new Problem.Outside(e, ConnectSays.FIND_FAILED, Elsewhere.words(e));
  }

  private void heard(SearchStep step) {
    SearchWords.lines(step).forEach(line -> evidence.add(line.in(desk.locale())));
    if (step instanceof SearchStep.Ports all) {
      listed.setAll(all.ports());
    } else if (step instanceof SearchStep.Heard one) {
      progress.set((double) one.tried() / one.atMost());
    }
  }

  private void ended(SearchEnding ending) {
    SearchWords.lines(ending).forEach(line -> evidence.add(line.in(desk.locale())));
    progress.set(1);
    if (ending instanceof SearchEnding.Found at) {
      found.set(at.spec().toString());
      state.set(at.needsNoFormat() ? State.READS : State.NEEDS_FORMAT);
    } else {
      state.set(State.NOTHING);
    }
  }

  private void failed(Problem problem) {
    state.set(State.NOTHING);
    desk.notices().show("connect", problem);
  }

  /** Stops it; what was heard stays. */
  void stop() {
    BalanceSearch search = running;
    if (search != null) {
      search.cancel();
    }
  }
}
