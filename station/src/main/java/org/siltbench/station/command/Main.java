package org.siltbench.station.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;

/** Where the program starts. */
public final class Main {

  private Main() {}

  public static void main(String[] args) {
    boolean window = args.length == 0 || args[0].startsWith("-") || args[0].equals("window");
    if (!window && System.getProperty("java.awt.headless") == null) {
      System.setProperty("java.awt.headless", "true");
    }
    System.exit(new Program(surroundings(Console.ofProcess())).run(args));
  }

  private static Surroundings surroundings(Console console) {
    return new Surroundings(
        console,
        Clock.system(ZoneId.systemDefault()),
        System.getenv(),
        Path.of(System.getProperty("user.home", ".")),
        System.getProperty("user.name", "unknown"),
        new LabFolders(),
        (spec, formats) -> new Balances(Timebase.system(), formats).open(spec),
        offered());
  }

  /** All commands that are on the class path, by name. */
  public static List<CommandEntry> offered() {
    List<CommandEntry> all = new ArrayList<>();
    for (CommandProvider provider : ServiceLoader.load(CommandProvider.class)) {
      all.addAll(provider.commands());
    }
    all.sort(Comparator.comparing(CommandEntry::words));
    return all;
  }
}
