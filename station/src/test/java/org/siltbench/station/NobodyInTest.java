package org.siltbench.station;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.Labs;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.table.SafeCells;

/** Nobody comes in: no port that listens, no server or script of the database, no formula. */
class NobodyInTest {

  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.siltbench");

  /** The practice balance on a network port of this computer, where a person asks for that. */
  private static final String SERVED_ON_REQUEST = "org.siltbench.balance.practice.TcpOutlet";

  @TempDir Path folder;

  @Test
  void noCodeOpensAPortThatListens() {
    assertTrue(OURS.contain("org.siltbench.station.command.Main"));
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName(SERVED_ON_REQUEST)
        .should()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.net\\.(ServerSocket|DatagramSocket)|java\\.nio\\.channels\\..*ServerSocketChannel"
                + "|com\\.sun\\.net\\.httpserver\\..*|java\\.rmi\\..*|org\\.h2\\.(tools|server)\\..*")
        .check(OURS);
  }

  @Test
  void whateverWritesATableLooksForFormulas() {
    DescribedPredicate<JavaClass> writers =
        new DescribedPredicate<>("write tables") {
          @Override
          public boolean test(JavaClass type) {
            return type.getDirectDependenciesFromSelf().stream()
                .anyMatch(uses -> uses.getTargetClass().isEquivalentTo(CsvWriter.class));
          }
        };
    DescribedPredicate<JavaClass> ours =
        new DescribedPredicate<>("are of the station") {
          @Override
          public boolean test(JavaClass type) {
            return type.getPackageName().startsWith("org.siltbench.station");
          }
        };
    classes()
        .that(writers.and(ours))
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(SafeCells.class)
        .check(OURS);
  }

  @Test
  void aCellThatASpreadsheetWouldRunIsDisarmedOnItsWayThrough() throws Exception {
    Path table = folder.resolve("table.csv");
    List<String> cells =
        List.of("=1+1", "+cmd", "-2+3", "@sum", "\ttab", "  =1", "\uFF1D1", "%x", "|x");
    StringBuilder text = new StringBuilder("filter,role,pre_g,post_g,volume_ml,site,\"=1+2\"\n");
    for (int i = 0; i < cells.size(); i++) {
      String cell = '"' + cells.get(i) + '"';
      text.append("F%d,sample,0.1,0.2,500,%s,%s%n".formatted(i, cell, cell));
    }
    Files.writeString(table, text);
    Path out = folder.resolve("out.csv");
    CommandLab lab = new CommandLab(folder.resolve("lab"));
    lab.ok("calc", table.toString(), "--method", "epa-160.2", "--out", out.toString());
    int seen = 0;
    try (var reader = de.siegmar.fastcsv.reader.CsvReader.builder().ofCsvRecord(out)) {
      for (var row : reader) {
        for (String cell : row.getFields()) {
          boolean number = cell.matches("[+-]?[0-9.]+([eE][+-]?[0-9]+)?");
          assertFalse(!number && cell.strip().matches("(?s)[=+\\-@%|\uFF1D].*"), cell);
          assertFalse(cell.startsWith("\t"), cell);
          seen += cell.startsWith("'") ? 1 : 0;
        }
      }
    }
    assertEquals(2 * cells.size() + 1, seen);
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void anOpenLabListensOnNoPort() throws Exception {
    Set<String> before = listening();
    try (OpenLab lab = new Labs(1).create(folder.resolve("lab"))) {
      lab.act(view -> List.of(Labs.weighing("F", "0.1")));
      assertEquals(before, listening());
      try (ServerSocket control = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        assertTrue(control.isBound());
        assertEquals(before.size() + 1, listening().size(), "the look must see a port");
      }
    }
  }

  /** The listening sockets of this process, by inode. */
  private static Set<String> listening() throws IOException {
    Set<String> listening = new HashSet<>();
    for (String table : List.of("tcp", "tcp6")) {
      try (Stream<String> lines = Files.lines(Path.of("/proc/self/net/" + table))) {
        lines
            .map(line -> line.strip().split("\\s+"))
            .filter(words -> words.length > 9 && words[3].equals("0A"))
            .forEach(words -> listening.add("socket:[" + words[9] + "]"));
      }
    }
    Set<String> own = new HashSet<>();
    try (Stream<Path> open = Files.list(Path.of("/proc/self/fd"))) {
      for (Path link : open.toList()) {
        own.addAll(target(link));
      }
    }
    listening.retainAll(own);
    return listening;
  }

  private static Set<String> target(Path link) throws IOException {
    try {
      return Set.of(Files.readSymbolicLink(link).toString());
    } catch (NoSuchFileException closedMeanwhile) {
      return Set.of();
    }
  }

  @Test
  void aFolderNameIsNoSettingOfTheDatabase() throws Exception {
    Path made = folder.resolve("made");
    Path script =
        Files.writeString(folder.resolve("x.sql"), "call csvwrite('" + made + "', 'select 1');");
    Path odd = folder.resolve("a;INIT=RUNSCRIPT FROM '" + script.getFileName() + "'");
    Path plain = folder.resolve("b;INIT=call csvwrite('made', 'select 1')");
    for (Path place : List.of(odd, plain)) {
      try (OpenLab lab = new Labs(1).create(place)) {
        lab.act(view -> List.of(Labs.weighing("F", "0.1")));
      }
    }
    assertFalse(Files.exists(made));
    assertFalse(Files.exists(Path.of("made")));
  }
}
