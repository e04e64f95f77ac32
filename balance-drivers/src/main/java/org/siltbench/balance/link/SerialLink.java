package org.siltbench.balance.link;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.Timebase;

/** A balance on a serial port or a USB adapter; also a pseudo-terminal, by link or by path. */
public final class SerialLink implements Link {

  /** The most the system may block in one read; only what has come already is read. */
  static final int READ_MILLIS = 50;

  private final LinkSpec.Serial spec;
  private final Timebase time;
  private final PortLister ports;
  private @Nullable PortIdentity identity;
  private boolean twinned;

  /** The link a text names, on the given clock. */
  public SerialLink(LinkSpec.Serial spec, Timebase time) {
    this(spec, time, new SystemPorts());
  }

  SerialLink(LinkSpec.Serial spec, Timebase time, PortLister ports) {
    this.spec = spec;
    this.time = time;
    this.ports = ports;
  }

  @Override
  public Set<Capability> capabilities() {
    return Set.of(Capability.SENDS, Capability.COMES_BACK, Capability.HAS_LINE_SETTINGS);
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
  public Connection connect() throws IOException {
    String path = path();
    SerialPort port = port(path);
    String real = realPath(path);
    PortIdentity found = ports.at(real).orElse(null);
    if (identity != null && !identity.equals(found)) {
      throw new BalanceException(
          BalanceSays.OTHER_DEVICE.with(path), BalanceSays.PLUG_AGAIN.with());
    }
    PortLock lock = PortLock.take(real, time);
    try {
      Connection out = new SerialConnection(open(port, path), lock, real, time);
      remember(found);
      return out;
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** The path asked for, or where the same USB adapter has come back. */
  private String path() {
    PortIdentity known = identity;
    return known == null || twinned ? spec.port() : known.among(ports.listed()).orElse(spec.port());
  }

  /**
   * An adapter with a twin beside it (the same maker and product, no serial number) is not looked
   * for under another name: with its own cable pulled, the twin would pass for its return.
   */
  private void remember(@Nullable PortIdentity found) {
    identity = found;
    twinned = found != null && found.among(ports.listed()).isEmpty();
  }

  private static String realPath(String path) throws IOException {
    Path file = Path.of(path);
    return Files.exists(file) ? file.toRealPath().toString() : path;
  }

  private static SerialPort port(String path) throws BalanceException {
    try {
      return SerialPort.getCommPort(path);
    } catch (SerialPortInvalidPortException e) {
      throw new BalanceException(BalanceSays.NO_PORT.with(path), BalanceSays.CHECK_PORT.with(), e);
    }
  }

  private SerialPort open(SerialPort port, String path) throws BalanceException {
    LineSettings line = spec.line();
    port.setComPortParameters(line.baud(), line.bits(), stop(line), parity(line));
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_MILLIS, 0);
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    if (!port.openPort(0)) {
      boolean denied = !Files.isReadable(Path.of(path)) || !Files.isWritable(Path.of(path));
      throw new BalanceException(
          (denied ? BalanceSays.NO_PERMISSION : BalanceSays.NOT_OPENED).with(path),
          (denied ? BalanceSays.ASK_ACCESS : BalanceSays.CHECK_USE).with());
    }
    return port;
  }

  private static int stop(LineSettings line) {
    return switch (line.stop()) {
      case ONE -> SerialPort.ONE_STOP_BIT;
      case ONE_AND_A_HALF -> SerialPort.ONE_POINT_FIVE_STOP_BITS;
      case TWO -> SerialPort.TWO_STOP_BITS;
    };
  }

  private static int parity(LineSettings line) {
    return switch (line.parity()) {
      case NONE -> SerialPort.NO_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
      case MARK -> SerialPort.MARK_PARITY;
      case SPACE -> SerialPort.SPACE_PARITY;
    };
  }
}
