package org.siltbench.station.window.desk;

import java.util.Locale;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;

/** The notices that stand now, the newest first. Used on the screen's thread. */
public final class Notices {

  private static final int MOST = 20;

  private final Locale language;
  private final ObservableList<Notice> list = FXCollections.observableArrayList();
  private final ObservableList<Notice> shown = FXCollections.unmodifiableObservableList(list);

  /** Notices in the language of the window. */
  public Notices(Locale language) {
    this.language = language;
  }

  /** What stands now. */
  public ObservableList<Notice> list() {
    return shown;
  }

  /** Shows one, in place of an older one about the same. */
  public void show(Notice notice) {
    clear(notice.about());
    list.add(0, notice);
    while (list.size() > MOST) {
      list.remove(list.size() - 1);
    }
  }

  /** Shows a problem. */
  public void show(String about, Problem problem) {
    show(Notice.of(about, problem, language));
  }

  /** Takes away what is about this. */
  public void clear(String about) {
    list.removeIf(notice -> notice.about().equals(about));
  }

  /** Takes the newest away: the person has read it. */
  public void dismiss() {
    if (!list.isEmpty()) {
      list.remove(0);
    }
  }

  /** Takes this one away. */
  public void dismiss(Notice notice) {
    list.remove(notice);
  }
}
