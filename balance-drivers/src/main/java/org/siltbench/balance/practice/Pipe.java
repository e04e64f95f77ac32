package org.siltbench.balance.practice;

import java.io.IOException;

/** Carries the practice balance's bytes from its side to the reader's. */
interface Pipe extends AutoCloseable {

  /** The balance's side: sends a line. */
  void send(byte[] line) throws IOException;

  /** The reader's side: waits for bytes that were sent; 0 if none came within a second. */
  int receive(byte[] into) throws IOException, InterruptedException;

  /** Where the reader's side is. */
  String where();

  @Override
  void close() throws IOException;
}
