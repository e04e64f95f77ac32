package org.siltbench.station.command.weigh;

import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.command.Session;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.postweigh.PostWeighReport;
import org.siltbench.station.work.postweigh.PostWeighRun;
import org.siltbench.station.work.weigh.WeighEvent;

/** Tells what happens while loaded filters are weighed. */
final class PostWeighLines implements PostWeighRun.Listener {

  private final Session session;
  private final EventLines lines;

  PostWeighLines(Session session) {
    this.session = session;
    this.lines = new EventLines(session);
  }

  @Override
  public void accept(WeighEvent event) {
    lines.accept(event);
  }

  @Override
  public void recorded(PostWeighReport.Done done) {
    Map<String, String> event = new LinkedHashMap<>();
    event.put("event", done.decision() ? "decide" : "verdict");
    event.put("filter", done.filter());
    event.put("verdict", done.verdict().kind().word());
    event.put("why", done.verdict().why());
    String line = done.filter() + ": " + done.verdict().why();
    session.progress(
        done.decision()
            ? line + " The method's number of dryings is used up: dry again, hold or reject it."
            : line,
        event);
  }

  @Override
  public void hint(String filter, Words said) {
    String text = said.english();
    Map<String, String> event = new LinkedHashMap<>();
    event.put("event", "hint");
    event.put("filter", filter);
    event.put("what", text);
    session.progress(text, event);
  }

  @Override
  public void askBag(String filter, String dish) {
    ask("Dish " + dish + " holds " + filter + ": scan its bag.", "scan-bag", filter, dish);
  }

  @Override
  public void askDish(String filter, String dish) {
    ask(filter + " lies in dish " + dish + ": scan the dish.", "scan-dish", filter, dish);
  }

  private void ask(String text, String name, String filter, String dish) {
    Map<String, String> event = new LinkedHashMap<>();
    event.put("event", name);
    event.put("filter", filter);
    event.put("dish", dish);
    session.progress(text, event);
  }
}
