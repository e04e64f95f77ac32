package org.siltbench.station.work.weigh;

import java.time.Duration;
import java.util.function.Consumer;
import org.siltbench.balance.SourceEvent;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/** Tells when a balance is away or silent, and gives up when that lasts too long. */
final class LinkWatch {

  private final Patience patience;
  private final Consumer<WeighEvent> listener;
  private boolean started;
  private long lastSign;
  private boolean away;
  private boolean told;
  private String unreadable = "";

  LinkWatch(Patience patience, Consumer<WeighEvent> listener) {
    this.patience = patience;
    this.listener = listener;
  }

  /** Takes what the source said. */
  void note(SourceEvent event) {
    if (event instanceof SourceEvent.Read read) {
      sign(read.reading().nanos());
      unreadable = "";
    } else if (event instanceof SourceEvent.Unreadable line) {
      unreadable(line);
    } else if (event instanceof SourceEvent.Lost lost) {
      lost(lost);
    } else if (event instanceof SourceEvent.Back back) {
      away = false;
      sign(back.nanos());
      listener.accept(new WeighEvent.LinkBack(back.where()));
    } else if (event instanceof SourceEvent.Quiet quiet) {
      quiet(quiet.nanos());
    } else if (event instanceof SourceEvent.Ended ended) {
      throw new Problem.Outside(null, WeighSays.SENDS_NO_MORE, Elsewhere.words(ended.reason()));
    }
  }

  /** Told once for each reason; a line that cannot be read is no sign of a working balance. */
  private void unreadable(SourceEvent.Unreadable line) {
    if (!line.why().equals(unreadable)) {
      unreadable = line.why();
      listener.accept(new WeighEvent.Unreadable(line.raw(), line.why()));
    }
    quiet(line.nanos());
  }

  private void sign(long nanos) {
    started = true;
    lastSign = nanos;
    told = false;
  }

  private void lost(SourceEvent.Lost lost) {
    sign(lost.nanos());
    away = true;
    listener.accept(new WeighEvent.LinkLost(lost.why()));
  }

  private void quiet(long nanos) {
    if (!started) {
      sign(nanos);
    }
    Duration since = Duration.ofNanos(nanos - lastSign);
    if (since.compareTo(patience.giveUp()) >= 0) {
      throw new Problem.Outside(
          null, away ? WeighSays.CABLE_AWAY : WeighSays.SILENT, since.toSeconds());
    }
    if (!away && !told && since.compareTo(patience.silence()) >= 0) {
      told = true;
      listener.accept(new WeighEvent.Silent(since));
    }
  }
}
