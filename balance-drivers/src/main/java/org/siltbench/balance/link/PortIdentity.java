package org.siltbench.balance.link;

import com.fazecast.jSerialComm.SerialPort;
import java.util.List;
import java.util.Optional;

/**
 * By what a USB adapter is known again under another name.
 *
 * @param vendor USB vendor number
 * @param product USB product number
 * @param serial its serial number as the system tells it
 */
record PortIdentity(int vendor, int product, String serial) {

  /** A port the system lists now. */
  record Listed(String path, PortIdentity identity) {}

  static Optional<PortIdentity> of(SerialPort port) {
    return port.getVendorID() < 0
        ? Optional.empty()
        : Optional.of(
            new PortIdentity(port.getVendorID(), port.getProductID(), port.getSerialNumber()));
  }

  /**
   * The port of this adapter among those listed; nothing if two could be meant, for the wrong
   * balance is worse than none.
   */
  Optional<String> among(List<Listed> ports) {
    List<String> same =
        ports.stream().filter(p -> p.identity().equals(this)).map(Listed::path).toList();
    return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
  }
}
