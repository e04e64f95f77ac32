package org.siltbench.balance.practice;

import java.io.IOException;

/** Where a practice balance for another process puts its lines; unheard lines are gone. */
interface Outlet extends AutoCloseable {

  /** Sends a line to whoever listens. */
  void send(byte[] line) throws IOException;

  /** True once for each time bytes have come from the reader's side. */
  boolean wasAsked() throws IOException;

  /** Where a reader finds it, as a link text. */
  String linkText();

  @Override
  void close() throws IOException;
}
