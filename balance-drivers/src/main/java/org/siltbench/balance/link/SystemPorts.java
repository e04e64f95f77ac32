package org.siltbench.balance.link;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.siltbench.balance.link.PortIdentity.Listed;

/** The USB adapters as the operating system tells them. */
final class SystemPorts implements PortLister {

  @Override
  public List<Listed> listed() {
    return Arrays.stream(SerialPort.getCommPorts())
        .flatMap(p -> PortIdentity.of(p).stream().map(id -> new Listed(p.getSystemPortPath(), id)))
        .toList();
  }

  @Override
  public Optional<PortIdentity> at(String path) {
    try {
      return PortIdentity.of(SerialPort.getCommPort(path));
    } catch (SerialPortInvalidPortException pulledJustNow) {
      return Optional.empty();
    }
  }
}
