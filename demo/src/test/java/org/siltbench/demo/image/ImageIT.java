package org.siltbench.demo.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The image and the package as a stranger gets them: made, unpacked into a scratch root, run. */
@Tag("long")
class ImageIT {

  private static final Path ROOT =
      Path.of(System.getProperty("siltbench.root", "..")).toAbsolutePath();

  @TempDir Path folder;

  @Test
  void thePackageUnpackedIntoAScratchRootRuns() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/dpkg-deb")), "dpkg-deb is missing");
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/fakeroot")), "fakeroot is missing");
    Path made = folder.resolve("made");
    run(
        List.of(
            ROOT.resolve("demo/image").toString(),
            "--deb",
            "--jars",
            jars().toString(),
            "--out",
            made.toString()));
    Path scratch = folder.resolve("root");
    run(List.of("dpkg-deb", "-x", deb(made).toString(), scratch.toString()));
    Path program = scratch.resolve("opt/siltbench/bin/siltbench");
    assertTrue(
        run(List.of(program.toString(), "methods", "--json")).contains("\"key\":\"epa-160.2\""));
    String lab = folder.resolve("lab").toString();
    run(List.of(program.toString(), "lab", "new", "--practice", "--lab", lab));
    String demo =
        run(
            List.of(
                program.toString(), "demo", "--json", "--out", folder.resolve("storm").toString()));
    assertTrue(demo.contains("\"lost\":0"), demo);
    menuEntry(scratch);
    depends(made);
  }

  private static void menuEntry(Path scratch) throws IOException {
    Path entry = scratch.resolve("opt/siltbench/lib/siltbench-siltbench.desktop");
    String text = Files.readString(entry);
    assertTrue(text.contains("Exec=/opt/siltbench/bin/siltbench"), text);
    String icon = text.replaceAll("(?s).*Icon=(\\S+).*", "$1");
    assertTrue(Files.size(scratch.resolve(icon.substring(1))) > 1000, icon);
  }

  private void depends(Path made) throws Exception {
    String depends = run(List.of("dpkg-deb", "-f", deb(made).toString(), "Depends"));
    for (String needed : List.of("libgtk-3-0", "libgl1", "libxxf86vm1", "libpango-1.0-0")) {
      assertTrue(depends.contains(needed), depends);
    }
  }

  private static Path deb(Path made) throws IOException {
    try (var files = Files.list(made)) {
      return files.filter(file -> file.toString().endsWith(".deb")).findFirst().orElseThrow();
    }
  }

  /** The jars of this build, made from the folders of classes where Maven has not packed them. */
  private Path jars() throws IOException {
    Path jars = Files.createDirectory(folder.resolve("jars"));
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    for (String each : path.split(File.pathSeparator)) {
      Path entry = Path.of(each);
      if (Files.isDirectory(entry) && entry.endsWith("target/classes")) {
        pack(
            entry,
            jars.resolve("siltbench-" + entry.getParent().getParent().getFileName() + ".jar"));
      } else if (Files.isRegularFile(entry)) {
        Files.copy(entry, jars.resolve(entry.getFileName().toString()));
      }
    }
    return jars;
  }

  private static void pack(Path classes, Path jar) {
    ToolProvider tool = ToolProvider.findFirst("jar").orElseThrow();
    assertEquals(
        0,
        tool.run(
            System.out, System.err, "-c", "-f", jar.toString(), "-C", classes.toString(), "."));
  }

  private String run(List<String> words) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.environment().put("HOME", folder.toString());
    builder.environment().remove("DISPLAY");
    Path said = folder.resolve("said");
    Process process = builder.redirectError(said.toFile()).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), () -> words + "\n" + out + text(said));
    return out;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }
}
