package org.siltbench.balance.link;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.PortIdentity.Listed;

/** USB adapters that only the lister believes in; their bytes cross real pseudo-terminals. */
public final class FakeAdapters implements PortLister {

  private final Map<String, PortIdentity> in = new ConcurrentHashMap<>();

  /** An adapter comes in under a name; a name already there is now this adapter. */
  public void plugIn(Path at, int product, String serial) throws java.io.IOException {
    in.put(at.toRealPath().toString(), new PortIdentity(0x1234, product, serial));
  }

  public void pullOutAll() {
    in.clear();
  }

  /** A serial link that asks these. */
  public Link link(Path at) {
    LinkSpec spec = LinkSpec.parse("serial:" + at);
    return new SerialLink((LinkSpec.Serial) spec, Timebase.system(), this);
  }

  @Override
  public List<Listed> listed() {
    return in.entrySet().stream().map(e -> new Listed(e.getKey(), e.getValue())).toList();
  }

  @Override
  public Optional<PortIdentity> at(String path) {
    return Optional.ofNullable(in.get(path));
  }
}
