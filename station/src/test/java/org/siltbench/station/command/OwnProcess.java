package org.siltbench.station.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program of this build in a process of its own, on the class path of the tests. */
public final class OwnProcess {

  private OwnProcess() {}

  /** The words that start it; options for Java first, then the program's own words are added. */
  public static List<String> words(String... forJava) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    words.addAll(List.of(forJava));
    words.add("-cp");
    words.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    words.add(Main.class.getName());
    return words;
  }
}
