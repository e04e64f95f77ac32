package org.siltbench.station.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.Position;

/** An opened lab folder, with what is done to the folder as a whole. */
public interface OpenLab extends Bench {

  /** Names who writes the entries from now on: 1 to 40 characters. */
  void operator(String initials);

  /** The lab folder. */
  Path folder();

  /** How far each ledger in the folder reaches, this bench's and the copies of others. */
  Map<String, Position> ledgers();

  /** Lines of one ledger as they stand in its file, from the entry after the given one. */
  List<String> lines(String bench, long after, int atMost);

  /**
   * Takes in lines of another bench's ledger, in order; those that are here already are passed
   * over.
   *
   * @return how many were new
   * @throws org.siltbench.station.Problem.Refused if they are damaged, of a newer version, or not
   *     the continuation of what is here
   */
  int receive(String bench, List<String> lines);

  /** Throws the register away and makes it anew from the ledgers; returns the entries read. */
  default long rebuild() {
    return rebuild(Count.NOBODY);
  }

  /** The same, telling how many entries were read. */
  long rebuild(Count count);

  /** Writes the register out in a fixed order: equal ledgers give equal text. */
  void export(Appendable out);

  /** Signs the newest hash with the bench's own key and writes it down. */
  Entry closeDay();

  /** Notes what is known outside of a ledger's newest hash, so that verify can compare later. */
  void anchor(String kind, String where, String bench, long seq, String head);
}
