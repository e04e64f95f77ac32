package org.siltbench.station.work.connect;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.find.Finder;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineParser;
import org.siltbench.balance.link.LinkSpec;

/**
 * Looks for a balance: lists the ports, tries line settings on each until readable lines come. It
 * sends nothing. {@link #run} blocks; {@link #cancel} may come from any thread. For one run.
 */
public final class BalanceSearch {

  private final Supplier<List<PortFacts>> ports;
  private final Finder.Opener opener;
  private final Duration each;
  private final Consumer<SearchStep> progress;
  private final List<Attempt> tried = new ArrayList<>();
  private volatile boolean cancelled;

  /**
   * A search to be run.
   *
   * @param ports lists the ports there are, as {@link PortFacts#all}
   * @param opener makes a link of a link text
   * @param each longest time to listen with one setting
   * @param progress hears each step, on the thread that runs the search
   */
  public BalanceSearch(
      Supplier<List<PortFacts>> ports,
      Finder.Opener opener,
      Duration each,
      Consumer<SearchStep> progress) {
    this.ports = ports;
    this.opener = opener;
    this.each = each;
    this.progress = progress;
  }

  /** Lists the ports and opens none. */
  public List<PortFacts> list() {
    List<PortFacts> all = ports.get();
    progress.accept(new SearchStep.Ports(all));
    return all;
  }

  /**
   * Searches all ports, or only the one named.
   *
   * @throws BalanceException if the one named cannot be opened
   */
  public SearchEnding run(@Nullable LinkSpec only) throws IOException, InterruptedException {
    List<PortFacts> all = list();
    List<LinkSpec> specs =
        only == null ? all.stream().map(PortFacts::spec).toList() : List.of(only);
    for (LinkSpec spec : specs) {
      Optional<Attempt> readable = only == null ? passingOver(spec) : search(spec);
      if (readable.isPresent()) {
        Attempt heard = readable.get();
        return new SearchEnding.Found(heard.spec(), heard, readsAsItIs(heard));
      }
      if (cancelled) {
        return new SearchEnding.Cancelled();
      }
    }
    return without(specs);
  }

  private SearchEnding without(List<LinkSpec> specs) {
    if (specs.isEmpty()) {
      return new SearchEnding.NoPort();
    }
    if (tried.isEmpty()) {
      return new SearchEnding.NoneOpened();
    }
    return tried.stream().allMatch(Attempt::isSilent)
        ? new SearchEnding.Silent()
        : new SearchEnding.Unreadable();
  }

  /** One port that cannot be opened does not end the search of the others. */
  private Optional<Attempt> passingOver(LinkSpec spec) throws IOException, InterruptedException {
    try {
      return search(spec);
    } catch (BalanceException e) {
      progress.accept(new SearchStep.PassedOver(spec, e.reason(), e.wayOut()));
      return Optional.empty();
    }
  }

  private Optional<Attempt> search(LinkSpec spec) throws IOException, InterruptedException {
    int before = tried.size();
    int atMost = Finder.mostAttempts(spec);
    Finder finder =
        new Finder(opener, each, attempt -> heard(attempt, before, atMost), () -> cancelled);
    List<Attempt> all = finder.search(spec);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(all.get(all.size() - 1)).filter(Attempt::readable);
  }

  private void heard(Attempt attempt, int before, int atMost) {
    tried.add(attempt);
    progress.accept(new SearchStep.Heard(attempt, tried.size() - before, atMost));
  }

  /** True if a plain number with a unit is all there is in every line. */
  private static boolean readsAsItIs(Attempt heard) {
    LineParser parser = LineFormat.standard().parser();
    return heard.lines().stream()
        .map(line -> line.getBytes(ISO_8859_1))
        .allMatch(b -> parser.parse(b, 0, b.length, 0, Instant.EPOCH) != null);
  }

  /** Everything that was tried so far. */
  public List<Attempt> tried() {
    return List.copyOf(tried);
  }

  /** Stops the search soon; what was heard so far stays. */
  public void cancel() {
    cancelled = true;
  }
}
