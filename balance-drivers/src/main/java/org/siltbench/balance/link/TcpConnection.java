package org.siltbench.balance.link;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;

/** A connected socket. */
final class TcpConnection implements Connection {

  private static final long NANOS_A_MILLI = 1_000_000;

  private final Socket socket;
  private final InputStream in;

  TcpConnection(Socket socket) throws IOException {
    this.socket = socket;
    this.in = socket.getInputStream();
  }

  @Override
  public int read(byte[] into, long atMostNanos) throws IOException {
    long millis = Math.max(1, Math.min(Integer.MAX_VALUE, atMostNanos / NANOS_A_MILLI));
    socket.setSoTimeout((int) millis);
    try {
      int count = in.read(into);
      if (count < 0) {
        throw new LinkException(BalanceSays.FAR_END_CLOSED.with());
      }
      return count;
    } catch (SocketTimeoutException quiet) {
      return 0;
    }
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    socket.getOutputStream().write(bytes);
  }

  @Override
  public String where() {
    return socket.getInetAddress().getHostAddress() + ":" + socket.getPort();
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
