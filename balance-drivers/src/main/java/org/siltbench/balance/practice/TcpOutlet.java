package org.siltbench.balance.practice;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import org.jspecify.annotations.Nullable;

/** One listener at a time on a TCP port of this machine. */
final class TcpOutlet implements Outlet {

  private final ServerSocket server;
  private @Nullable Socket client;

  TcpOutlet(int port) throws IOException {
    server = new ServerSocket(port, 1, InetAddress.getLoopbackAddress());
    server.setSoTimeout(1);
  }

  @Override
  public void send(byte[] line) throws IOException {
    Socket now = client();
    if (now == null) {
      return;
    }
    try {
      now.getOutputStream().write(line);
    } catch (IOException gone) {
      hangUp(now); // the listener left; the balance goes on
    }
  }

  private @Nullable Socket client() throws IOException {
    if (client == null) {
      try {
        client = server.accept();
      } catch (SocketTimeoutException nobody) {
        return null;
      }
    }
    return client;
  }

  private void hangUp(Socket gone) throws IOException {
    gone.close();
    client = null;
  }

  @Override
  public boolean wasAsked() throws IOException {
    Socket now = client();
    if (now == null) {
      return false;
    }
    try {
      int waiting = now.getInputStream().available();
      return waiting > 0 && now.getInputStream().skip(waiting) > 0;
    } catch (IOException gone) {
      hangUp(now);
      return false;
    }
  }

  @Override
  public String linkText() {
    return "tcp:127.0.0.1:" + server.getLocalPort();
  }

  @Override
  public void close() throws IOException {
    try (server) {
      if (client != null) {
        client.close();
      }
    }
  }
}
