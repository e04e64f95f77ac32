package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Console;
import org.siltbench.station.work.postweigh.Ids;

/** Scans from standard input: a line is read only after it was asked for. */
final class ScanOnDemand implements Ids {

  private static final int LISTED = 1000;
  private static final long AT_ONCE_MILLIS = 50;

  private final Console console;
  private final Semaphore asked = new Semaphore(0);
  private final LinkedBlockingQueue<Answer> answers = new LinkedBlockingQueue<>();
  private boolean awaiting;
  private boolean justAsked;

  private ScanOnDemand(Console console) {
    this.console = console;
  }

  static ScanOnDemand of(Console console) {
    ScanOnDemand scans = new ScanOnDemand(console);
    Thread reader = new Thread(scans::read, "scans");
    reader.setDaemon(true);
    reader.start();
    return scans;
  }

  private void read() {
    try {
      boolean more = true;
      while (more) {
        asked.acquire();
        String line = console.readLine();
        more = line != null;
        answers.add(line == null ? Answer.END : Answer.of(line));
      }
    } catch (IOException e) {
      answers.add(Answer.END);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void ask() {
    if (!awaiting) {
      awaiting = true;
      justAsked = true;
      asked.release();
    }
  }

  /** A line that stands on the input already is answered at once, before the next reading. */
  @Override
  public @Nullable Answer poll() {
    Answer answer = justAsked ? await() : answers.poll();
    justAsked = false;
    if (answer != null) {
      awaiting = false;
    }
    return answer;
  }

  private @Nullable Answer await() {
    try {
      return answers.poll(AT_ONCE_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return null;
    }
  }

  /** What still stands on an input that has ended, for the list of what was not weighed. */
  List<String> rest() {
    List<String> rest = new ArrayList<>();
    try {
      String line = console.readyLine();
      while (line != null && rest.size() < LISTED) {
        if (!line.isBlank()) {
          rest.add(line.strip());
        }
        line = console.readyLine();
      }
    } catch (IOException e) {
      rest.add("(the rest cannot be read: " + e.getMessage() + ')');
    }
    return rest;
  }
}
