package org.siltbench.station.command.balance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.FormatText;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.learn.Learned;
import org.siltbench.station.command.Session;
import org.siltbench.station.work.connect.LessonWords;

/** Tells what was learned: for people line by line, for programs as one document. */
final class LearnText {

  private final Session session;
  private final Learned learned;

  LearnText(Session session, Learned learned) {
    this.session = session;
    this.learned = learned;
  }

  void explain() {
    LessonWords.evidence(learned).forEach(line -> session.fact(line.english()));
    if (learned.format() != null) {
      session.fact("");
      LessonWords.format(learned).forEach(session::fact);
    }
  }

  void document(@Nullable Path saved) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    LineFormat format = learned.format();
    out.put("format", format == null ? null : fields(format));
    out.put("unknown", learned.unknown());
    out.put("findings", learned.findings());
    List<Map<String, @Nullable Object>> lines = new ArrayList<>();
    learned.lines().forEach(l -> lines.add(Digits.fields(Visible.show(l.text()), l.reading())));
    out.put("lines", lines);
    out.put("saved", saved == null ? null : saved.toString());
    session.document(out);
  }

  /** The keys of the format's file, and the file itself. */
  private static Map<String, @Nullable Object> fields(LineFormat format) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    Map<String, String> units = new LinkedHashMap<>();
    Map<String, String> marks = new LinkedHashMap<>();
    Map<String, String> texts = new LinkedHashMap<>();
    format.units().texts().forEach(u -> units.put(Visible.show(u.text()), u.unit().symbol()));
    format.marks().forEach(m -> marks.put(Visible.show(m.text()), m.meaning().word()));
    format.texts().forEach(t -> texts.put(Visible.show(t.text()), t.meaning().word()));
    out.put("name", format.name());
    out.put("ends", Visible.show(format.ends().text()));
    out.put("point", String.valueOf(format.number().point()));
    out.put("decimals_least", format.number().least());
    out.put("decimals_most", format.number().most());
    out.put("units", units);
    out.put("marks", marks);
    out.put("texts", texts);
    out.put("talks", format.talk().how().words());
    out.put("text", FormatText.print(format));
    return out;
  }
}
