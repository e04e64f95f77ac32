package org.siltbench.balance.link;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.CompletableFuture;
import org.siltbench.balance.Timebase;

/** The TCP link on real sockets. */
class TcpLinkTest extends LinkContract {

  private ServerSocket server;
  private CompletableFuture<Socket> peer;
  private int port;

  @Override
  Link plug() throws Exception {
    port = 0;
    plugInAgain();
    port = server.getLocalPort();
    LinkSpec spec = LinkSpec.parse("tcp:127.0.0.1:" + port);
    return new TcpLink((LinkSpec.Tcp) spec, Timebase.system());
  }

  @Override
  void plugInAgain() throws Exception {
    server = new ServerSocket();
    server.setReuseAddress(true);
    server.bind(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), port));
    peer =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return server.accept();
              } catch (IOException e) {
                throw new IllegalStateException(e);
              }
            });
  }

  @Override
  void send(byte[] bytes) throws Exception {
    peer.get().getOutputStream().write(bytes);
  }

  @Override
  byte[] receive(int count) throws Exception {
    return peer.get().getInputStream().readNBytes(count);
  }

  @Override
  void pullOut() throws Exception {
    if (peer.isDone() && !peer.isCompletedExceptionally()) {
      peer.get().close();
    }
    server.close();
    CompletableFuture<Socket> late = peer;
    if (!late.isDone()) {
      late.handle((socket, why) -> socket).get();
    }
    if (!late.isCompletedExceptionally()) {
      late.get().close();
    }
  }

  @Override
  void unplug() throws Exception {
    pullOut();
  }
}
