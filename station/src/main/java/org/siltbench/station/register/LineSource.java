package org.siltbench.station.register;

import java.io.IOException;
import org.siltbench.station.ledger.Entry;

/** Where the register reads the text of an entry again; it keeps no copy of its own. */
public interface LineSource {

  /** The entry whose line stands at an offset of a bench's ledger. */
  Entry entry(String bench, long at, int length) throws IOException;

  /** The text of that line. */
  String text(String bench, long at, int length) throws IOException;
}
