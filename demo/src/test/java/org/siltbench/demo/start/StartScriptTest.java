package org.siltbench.demo.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script with a Java that tells how it was called. */
class StartScriptTest {

  private static final String WINDOW = "-XX:TieredStopAtLevel=1";
  private static final String COMMAND = "-XX:TieredStopAtLevel=4";

  @TempDir Path folder;

  @BeforeEach
  void setUp() throws IOException {
    Path build = folder.resolve(".siltbench-build");
    Path app = Files.createDirectories(build.resolve("app.1"));
    Files.createSymbolicLink(build.resolve("current"), Path.of("app.1"));
    Files.writeString(app.resolve("siltbench-demo.jar"), "");
    Files.writeString(app.resolve("stamp"), "");
    Files.copy(Path.of("..", "siltbench"), folder.resolve("siltbench"));
    Files.writeString(folder.resolve("pom.xml"), "");
    for (String room : List.of(".mvn", "calc", "balance-drivers", "labels", "station", "demo")) {
      Files.createDirectories(folder.resolve(room));
    }
    Files.setLastModifiedTime(app.resolve("stamp"), FileTime.from(Instant.now().plusSeconds(60)));
    Path java = Files.createDirectories(folder.resolve("java/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho \"$@\"\n");
    assertTrue(java.toFile().setExecutable(true));
  }

  @Test
  void noWordsTheWordWindowAndOptionsAloneOpenTheWindow() throws Exception {
    for (List<String> words :
        List.of(List.<String>of(), List.of("window"), List.of("--lab", "alder-fork"))) {
      String said = started("", words);
      assertTrue(said.contains(WINDOW), said);
      assertTrue(said.contains("java.awt.headless=false"), said);
    }
  }

  @Test
  void commandsHelpAndVersionDoNot() throws Exception {
    for (String word : List.of("methods", "-h", "--help", "-V", "--version")) {
      String said = started("", List.of(word));
      assertTrue(said.contains(COMMAND), said);
      assertTrue(said.contains("java.awt.headless=true"), said);
    }
  }

  @Test
  void aMeasureHasTheWholeCompilerUnlessItOpensAWindow() throws Exception {
    assertTrue(started("a.Measure", List.of()).contains(COMMAND));
    assertTrue(started("a.Measure", List.of("--json")).contains(COMMAND));
    assertTrue(started("a.Measure", List.of("window")).contains(WINDOW));
  }

  @Test
  void whatJavaSaysOfItselfNeverGoesToStandardOutput() throws Exception {
    String said = started("", List.of("methods", "--json"));
    assertTrue(said.startsWith("-Xlog:disable -Xlog:all=error:stderr"), said);
    assertTrue(said.stripTrailing().endsWith("methods --json"), said);
  }

  @Test
  void aJavaThatIsMissingIsToldAndChangesNothing() throws Exception {
    Files.delete(folder.resolve("java/bin/java"));
    Process process = start("", List.of("methods"));
    String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(3, process.waitFor());
    assertTrue(said.contains("Nothing was changed."), said);
    assertFalse(said.contains("Building"), said);
  }

  private String started(String main, List<String> words) throws Exception {
    Process process = start(main, words);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String wrong = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), wrong);
    return said;
  }

  private Process start(String main, List<String> words) throws IOException {
    List<String> command = new ArrayList<>(List.of("bash", folder.resolve("siltbench").toString()));
    command.addAll(words);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", folder.resolve("java").toString());
    builder.environment().remove("SILTBENCH_TIER");
    builder.environment().remove("SILTBENCH_MAIN");
    if (!main.isEmpty()) {
      builder.environment().put("SILTBENCH_MAIN", main);
    }
    return builder.start();
  }
}
