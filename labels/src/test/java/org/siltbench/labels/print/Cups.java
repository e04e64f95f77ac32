package org.siltbench.labels.print;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * A print system of its own, away from the machine's: its folders, its port, one queue whose
 * printer is a folder. A file named {@code empty} there is an empty tray.
 */
final class Cups implements AutoCloseable {

  private static final String PPD =
      """
      *PPD-Adobe: "4.3"
      *FormatVersion: "4.3"
      *FileVersion: "1.0"
      *LanguageVersion: English
      *LanguageEncoding: ISOLatin1
      *PCFileName: "LABEL.PPD"
      *Manufacturer: "Generic"
      *Product: "(label)"
      *ModelName: "label to PDF"
      *ShortNickName: "label to PDF"
      *NickName: "label to PDF"
      *PSVersion: "(3010) 1"
      *LanguageLevel: "3"
      *ColorDevice: False
      *cupsFilter: "application/vnd.cups-pdf 0 -"
      *VariablePaperSize: True
      *MaxMediaWidth: "1000"
      *MaxMediaHeight: "1000"
      *HWMargins: 0 0 0 0
      *CustomPageSize True: "pop"
      *ParamCustomPageSize Width: 1 points 36 1000
      *ParamCustomPageSize Height: 2 points 36 1000
      *ParamCustomPageSize WidthOffset: 3 points 0 0
      *ParamCustomPageSize HeightOffset: 4 points 0 0
      *ParamCustomPageSize Orientation: 5 int 0 0
      *OpenUI *PageSize: PickOne
      *DefaultPageSize: A4
      *PageSize A4: "<</PageSize[595 842]>>setpagedevice"
      *CloseUI: *PageSize
      *OpenUI *PageRegion: PickOne
      *DefaultPageRegion: A4
      *PageRegion A4: "<</PageSize[595 842]>>setpagedevice"
      *CloseUI: *PageRegion
      *DefaultImageableArea: A4
      *ImageableArea A4: "0 0 595 842"
      *DefaultPaperDimension: A4
      *PaperDimension A4: "595 842"
      """;

  private static final String BACKEND =
      """
      #!/bin/sh
      out=%s
      [ $# -eq 0 ] && { echo 'direct tray "Unknown" "a folder"'; exit 0; }
      while [ -e "$out/empty" ]; do
        echo 'STATE: +media-empty-error' >&2
        sleep 0.1
      done
      echo 'STATE: -media-empty-error' >&2
      if [ $# -ge 6 ]; then cat "$6"; else cat; fi > "$out/job-$1.tmp" && mv "$out/job-$1.tmp" "$out/job-$1.pdf"
      """;

  private final Path root;
  private final Path out;
  private final Process server;
  private final Lp lp;

  private Cups(Path root, Process server, int port) {
    this.root = root;
    this.out = root.resolve("out");
    this.server = server;
    this.lp = new Lp(Map.of("CUPS_SERVER", "localhost:" + port));
  }

  static Cups start() throws Exception {
    Path root = Files.createTempDirectory("cups");
    Files.setPosixFilePermissions(root, PosixFilePermissions.fromString("rwxr-xr-x"));
    for (String folder : List.of("etc", "state", "cache", "spool", "log", "tmp", "out", "bin")) {
      Files.createDirectory(root.resolve(folder));
    }
    Files.setPosixFilePermissions(
        root.resolve("out"), PosixFilePermissions.fromString("rwxrwxrwx"));
    programs(root);
    int port = freePort();
    settings(root, port);
    Process server =
        new ProcessBuilder(
                "/usr/sbin/cupsd",
                "-f",
                "-c",
                root.resolve("etc/cupsd.conf").toString(),
                "-s",
                root.resolve("etc/cups-files.conf").toString())
            .redirectErrorStream(true)
            .redirectOutput(root.resolve("log/console").toFile())
            .start();
    Cups cups = new Cups(root, server, port);
    cups.await(() -> cups.tell("lpstat", "-r").text().contains("is running"));
    cups.addQueue();
    return cups;
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  /** The system's own filters and helpers, and our tray among the backends. */
  private static void programs(Path root) throws IOException {
    Path bin = root.resolve("bin");
    Path backends = Files.createDirectory(bin.resolve("backend"));
    try (Stream<Path> all = Files.list(Path.of("/usr/lib/cups"))) {
      for (Path each : all.toList()) {
        if (!each.endsWith("backend")) {
          Files.createSymbolicLink(bin.resolve(each.getFileName()), each);
        }
      }
    }
    Path tray = Files.writeString(backends.resolve("tray"), BACKEND.formatted(root.resolve("out")));
    Files.setPosixFilePermissions(tray, PosixFilePermissions.fromString("rwx------"));
  }

  private static void settings(Path root, int port) throws IOException {
    Files.writeString(
        root.resolve("etc/cupsd.conf"),
        """
        Listen localhost:%d
        LogLevel warn
        DefaultAuthType None
        WebInterface No
        Browsing Off
        DefaultErrorPolicy retry-job
        <Location />
          Order allow,deny
          Allow all
        </Location>
        <Policy default>
          <Limit All>
            Order deny,allow
            Allow all
          </Limit>
        </Policy>
        """
            .formatted(port));
    Files.writeString(
        root.resolve("etc/cups-files.conf"),
        """
        ServerRoot %1$s/etc
        ServerBin %1$s/bin
        StateDir %1$s/state
        CacheDir %1$s/cache
        RequestRoot %1$s/spool
        TempDir %1$s/tmp
        ErrorLog %1$s/log/error
        AccessLog %1$s/log/access
        PageLog %1$s/log/page
        SystemGroup root
        """
            .formatted(root));
  }

  private void addQueue() throws IOException {
    Path ppd = Files.writeString(root.resolve("label.ppd"), PPD);
    Lp.Said said =
        tell(
            "lpadmin",
            "-p",
            "label",
            "-v",
            "tray:/",
            "-P",
            ppd.toString(),
            "-E",
            "-o",
            "printer-is-shared=false");
    if (!said.ok()) {
      throw new IOException("no queue: " + said.text());
    }
  }

  Lp lp() {
    return lp;
  }

  Lp.Said tell(String... words) {
    return lp.run(List.of(words));
  }

  void trayIsEmpty(boolean empty) throws IOException {
    if (empty) {
      Files.writeString(out.resolve("empty"), "");
    } else {
      Files.deleteIfExists(out.resolve("empty"));
    }
  }

  /** What came out of the printer so far. */
  List<Path> printed() {
    try (Stream<Path> all = Files.list(out)) {
      return all.filter(p -> p.toString().endsWith(".pdf")).sorted().toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Waits for the print system, which works in its own time. */
  void await(BooleanSupplier condition) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("the print system did not get there: " + log());
      }
      server.waitFor(50, TimeUnit.MILLISECONDS);
    }
  }

  private String log() throws IOException {
    Path log = root.resolve("log/error");
    return Files.exists(log) ? Files.readString(log) : "no log";
  }

  /** The server goes away, as when a cable is pulled. */
  void stop() throws InterruptedException {
    server.destroy();
    if (!server.waitFor(20, TimeUnit.SECONDS)) {
      server.destroyForcibly();
    }
  }

  @Override
  public void close() throws Exception {
    trayIsEmpty(false);
    stop();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
