package org.siltbench.balance.link;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.UnknownHostException;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.Timebase;

/** A balance behind a TCP port, with RFC 2217 port control if asked for. */
public final class TcpLink implements Link {

  private static final int CONNECT_MILLIS = 3000;

  private final LinkSpec.Tcp spec;
  private final Timebase time;

  /** The link a text names, on the given clock. */
  public TcpLink(LinkSpec.Tcp spec, Timebase time) {
    this.spec = spec;
    this.time = time;
  }

  @Override
  public Set<Capability> capabilities() {
    Set<Capability> out = EnumSet.of(Capability.SENDS, Capability.COMES_BACK);
    if (spec.rfc2217() != null) {
      out.add(Capability.HAS_LINE_SETTINGS);
    }
    return out;
  }

  @Override
  public String describe() {
    return spec.toString();
  }

  @Override
  public Timebase time() {
    return time;
  }

  @Override
  @SuppressWarnings("resource") // the connection owns the socket and closes it
  public Connection connect() throws IOException {
    Socket socket = new Socket();
    try {
      socket.connect(new InetSocketAddress(spec.host(), spec.port()), CONNECT_MILLIS);
      socket.setKeepAlive(true);
      socket.setTcpNoDelay(true);
      return open(socket, spec.rfc2217());
    } catch (UnknownHostException e) {
      socket.close();
      throw new BalanceException(
          BalanceSays.NO_MACHINE.with(spec.host()), BalanceSays.CHECK_MACHINE.with(), e);
    } catch (BalanceException e) {
      socket.close();
      throw e;
    } catch (IOException e) {
      socket.close();
      throw new BalanceException(
          BalanceSays.NOT_REACHED.with(spec.host(), spec.port(), e),
          BalanceSays.CHECK_NETWORK.with(),
          e);
    }
  }

  private Connection open(Socket socket, @Nullable LineSettings line) throws IOException {
    TcpConnection raw = new TcpConnection(socket);
    return line == null ? raw : PortControl.open(raw, line, time);
  }
}
