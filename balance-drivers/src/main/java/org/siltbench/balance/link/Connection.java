package org.siltbench.balance.link;

import java.io.IOException;

/** A link in use, read by one thread; only {@link #close} may come from another. */
public interface Connection extends AutoCloseable {

  /** What {@link #read} returns when no more will ever come. */
  int END = -1;

  /**
   * Waits for bytes, at most the given time of the link's clock.
   *
   * @return how many bytes were put at the front of {@code into}; 0 if none came in time; {@link
   *     #END} if no more will ever come
   * @throws IOException if the link is lost; it then stays lost
   */
  int read(byte[] into, long atMostNanos) throws IOException, InterruptedException;

  /** Sends bytes to the balance; only links with {@link Link.Capability#SENDS}. */
  void write(byte[] bytes) throws IOException;

  /** Where this connection leads: the real path of a port, an address. */
  String where();

  @Override
  void close() throws IOException;
}
