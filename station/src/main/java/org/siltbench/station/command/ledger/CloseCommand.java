package org.siltbench.station.command.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.ledger.Entry;

/** {@code close}: the end of a day. */
final class CloseCommand implements Task {

  @Override
  public int run(Session session) {
    OpenLab lab = Opened.lab(session);
    Entry closed = lab.closeDay();
    String head = String.valueOf(closed.data().get("head"));
    long seq = closed.ref().seq() - 1;
    lab.anchor("day-end", closed.at().toString(), lab.code(), seq, head);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("bench", lab.code());
    document.put("seq", seq);
    document.put("head", head);
    document.put("signature", closed.data().get("signature"));
    document.put("key", closed.data().get("key"));
    session.document(document);
    session.fact("The day at bench " + lab.code() + " is closed after entry " + seq + '.');
    session.fact("head " + head);
    session.fact("signature " + closed.data().get("signature"));
    session.fact("Keep this with the day's papers: siltbench verify --paper HASH compares it.");
    return 0;
  }
}
