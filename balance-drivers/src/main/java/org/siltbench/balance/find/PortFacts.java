package org.siltbench.balance.find;

import com.fazecast.jSerialComm.SerialPort;
import java.util.Arrays;
import java.util.List;
import org.siltbench.balance.link.LineSettings;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.SpecOptions;

/**
 * What the system knows of a port.
 *
 * @param path what to write behind {@code serial:}
 * @param name how the system describes it
 * @param usb maker and product number, or empty if it is no USB adapter
 */
public record PortFacts(String path, String name, String usb) {

  /** The ports there are now. Pseudo-terminals are not among them; they can be named by path. */
  public static List<PortFacts> all() {
    return Arrays.stream(SerialPort.getCommPorts()).map(PortFacts::of).toList();
  }

  /** The text that names a balance on this port, with the commonest line settings. */
  public LinkSpec spec() {
    return new LinkSpec.Serial(path, LineSettings.DEFAULT, SpecOptions.NONE);
  }

  private static PortFacts of(SerialPort port) {
    String usb =
        port.getVendorID() < 0
            ? ""
            : String.format("%04x:%04x", port.getVendorID(), port.getProductID());
    return new PortFacts(port.getSystemPortPath(), port.getDescriptivePortName(), usb);
  }
}
