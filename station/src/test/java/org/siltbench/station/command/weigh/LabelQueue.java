package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * A print system of its own with one queue, {@code label}. Its printer is a folder; a file {@code
 * empty} in it is an empty tray. With each job the printer keeps a copy of a witness file, as that
 * stood when the job came out.
 */
public final class LabelQueue implements AutoCloseable {

  private static final String BACKEND =
      """
      #!/bin/sh
      out=%1$s
      [ $# -eq 0 ] && { echo 'direct tray "Unknown" "a folder"'; exit 0; }
      while [ -e "$out/empty" ]; do
        echo 'STATE: +media-empty-error' >&2
        sleep 0.1
      done
      echo 'STATE: -media-empty-error' >&2
      cat %2$s > "$out/witness-$1"
      if [ $# -ge 6 ]; then cat "$6"; else cat; fi > "$out/job.tmp" && mv "$out/job.tmp" "$out/job-$1.pdf"
      """;

  private static final String PPD =
      """
      *PPD-Adobe: "4.3"
      *FormatVersion: "4.3"
      *FileVersion: "1.0"
      *LanguageVersion: English
      *LanguageEncoding: ISOLatin1
      *PCFileName: "TRAY.PPD"
      *Manufacturer: "Generic"
      *Product: "(tray)"
      *ModelName: "tray"
      *ShortNickName: "tray"
      *NickName: "tray"
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

  private final Path root;
  private final Path out;
  private final int port;
  private Process server;

  private LabelQueue(Path root, int port) {
    this.root = root;
    this.out = root.resolve("out");
    this.port = port;
  }

  /** False where the print system is not installed, or may not be started. */
  public static boolean canBeHere() {
    return Files.isExecutable(Path.of("/usr/sbin/cupsd"))
        && "root".equals(System.getProperty("user.name"));
  }

  /**
   * Starts one.
   *
   * @param witness the file of which a copy is kept with each job
   */
  public static LabelQueue start(Path witness) throws Exception {
    Path root = Files.createTempDirectory("queue");
    Files.setPosixFilePermissions(root, PosixFilePermissions.fromString("rwxr-xr-x"));
    for (String folder : List.of("etc", "state", "cache", "spool", "log", "tmp", "out", "bin")) {
      Files.createDirectory(root.resolve(folder));
    }
    LabelQueue queue = new LabelQueue(root, freePort());
    queue.programs(witness);
    queue.settings();
    queue.on();
    Path ppd = Files.writeString(root.resolve("tray.ppd"), PPD);
    queue.tell(
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
    return queue;
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  private void programs(Path witness) throws IOException {
    Path bin = root.resolve("bin");
    Path backends = Files.createDirectory(bin.resolve("backend"));
    try (Stream<Path> all = Files.list(Path.of("/usr/lib/cups"))) {
      for (Path each : all.filter(path -> !path.endsWith("backend")).toList()) {
        Files.createSymbolicLink(bin.resolve(each.getFileName()), each);
      }
    }
    Path tray = Files.writeString(backends.resolve("tray"), BACKEND.formatted(out, witness));
    // Only its owner may run it: then the print system starts it as root, and it may read the lab.
    Files.setPosixFilePermissions(tray, PosixFilePermissions.fromString("rwx------"));
  }

  private void settings() throws IOException {
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

  /** The print system starts, or comes back. */
  void on() throws Exception {
    server =
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
    await(() -> tell("lpstat", "-r").contains("is running"));
  }

  /** The print system goes away. */
  void off() throws InterruptedException {
    server.destroy();
    if (!server.waitFor(20, TimeUnit.SECONDS)) {
      server.destroyForcibly().waitFor();
    }
  }

  /** What a program must have in its environment to find this print system. */
  public String address() {
    return "localhost:" + port;
  }

  String tell(String... words) {
    try {
      ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
      builder.environment().put("CUPS_SERVER", address());
      builder.environment().put("LC_ALL", "C");
      return new String(builder.start().getInputStream().readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void trayIsEmpty(boolean empty) throws IOException {
    if (empty) {
      Files.writeString(out.resolve("empty"), "");
      Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("rwxrwxrwx"));
    } else {
      Files.deleteIfExists(out.resolve("empty"));
    }
  }

  /** What came out so far, in the order of the jobs. */
  public List<Path> printed() {
    try (Stream<Path> all = Files.list(out)) {
      return all.filter(path -> path.toString().endsWith(".pdf"))
          .sorted(Comparator.comparingInt(LabelQueue::job))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The witness file as it stood when this job came out. */
  public String witness(Path job) throws IOException {
    return Files.readString(out.resolve("witness-" + job(job)));
  }

  private static int job(Path file) {
    return Integer.parseInt(file.getFileName().toString().replaceAll("\\D", ""));
  }

  /** Waits for what the print system does in its own time. */
  public void await(BooleanSupplier condition) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError(
            "the print system did not get there: " + Files.readString(root.resolve("log/error")));
      }
      server.waitFor(50, TimeUnit.MILLISECONDS);
    }
  }

  @Override
  public void close() throws Exception {
    trayIsEmpty(false);
    off();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
