package org.siltbench.station.work.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.siltbench.balance.format.FormatText;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.MethodException;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.media.MediaText;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.paper.PaperFile;
import org.siltbench.station.work.paper.PaperFolder;

/**
 * Line formats, methods and label stock that a lab keeps as plain files: taken in from elsewhere
 * after they were read as what they are, and given out as they stand.
 */
public final class OwnFiles {

  private static final int MOST_BYTES = 64 * 1024;

  /** What is kept. */
  public enum Kind {
    FORMAT("formats", ".lineformat"),
    METHOD("methods", ".method"),
    MEDIA("media", ".media");

    private final String folder;
    private final String suffix;

    Kind(String folder, String suffix) {
      this.folder = folder;
      this.suffix = suffix;
    }

    static Optional<Kind> of(String name) {
      return Stream.of(values()).filter(kind -> name.endsWith(kind.suffix)).findFirst();
    }
  }

  private final Path lab;

  /** Those of the lab in this folder. */
  public OwnFiles(Path lab) {
    this.lab = lab;
  }

  /** Their names, and those of the method presets. */
  public List<String> names() {
    List<String> out = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      out.addAll(names(kind));
    }
    for (Method method : MethodBook.of(lab).all()) {
      String name = method.key() + Kind.METHOD.suffix;
      if (!out.contains(name)) {
        out.add(name);
      }
    }
    return out;
  }

  private List<String> names(Kind kind) {
    Path folder = lab.resolve(kind.folder);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(kind.suffix))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new Problem.Outside(e, ExchangeSays.OWN_UNREADABLE, folder, Elsewhere.words(e));
    }
  }

  /**
   * Takes a file in; the same file again changes nothing.
   *
   * @return where it is kept
   * @throws Problem if it is none of ours, makes no sense, or another of its name is there
   */
  public Path take(Path file) {
    String name = String.valueOf(file.getFileName());
    Kind kind =
        Kind.of(name)
            .orElseThrow(() -> new Problem.WrongUse(ExchangeSays.OWN_SUFFIX, file.getFileName()));
    String text = read(file);
    check(kind, name, text);
    Path home = lab.resolve(kind.folder);
    Path kept = home.resolve(name);
    if (Files.exists(kept) && read(kept).equals(text)) {
      return kept;
    }
    if (names().contains(name)) {
      throw new Problem.Refused(ExchangeSays.OWN_EXISTS, name);
    }
    PaperFolder.make(home);
    return write(kept, text);
  }

  /** Writes one of them into a folder, as it stands. */
  public Path give(String name, Path folder) {
    if (!names().contains(name)) {
      throw new Problem.WrongUse(ExchangeSays.OWN_NONE, name, String.join(", ", names()));
    }
    Kind kind = Kind.of(name).orElseThrow();
    Path kept = lab.resolve(kind.folder).resolve(name);
    String text =
        Files.exists(kept)
            ? read(kept)
            : MethodBook.of(lab).get(name.replace(kind.suffix, "")).text();
    PaperFolder.make(folder);
    return write(folder.resolve(name), text);
  }

  private static Path write(Path file, String text) {
    PaperFile.write(file, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
    return file;
  }

  private static String read(Path file) {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new Problem.WrongUse(ExchangeSays.OWN_WRONG, file, "> " + MOST_BYTES + " B");
      }
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Problem.Outside(e, ExchangeSays.OWN_UNREADABLE, file, Elsewhere.words(e));
    }
  }

  /** Read as what it is; a method is kept under its own key, which others refer to. */
  private static void check(Kind kind, String name, String text) {
    try {
      switch (kind) {
        case FORMAT -> FormatText.parse(text);
        case MEDIA -> MediaText.parse(text, name);
        case METHOD -> {
          String key = Method.parse(text).key();
          if (!name.equals(key + kind.suffix)) {
            throw new Problem.WrongUse(ExchangeSays.OWN_WRONG, name, "key = " + key);
          }
        }
      }
    } catch (PaperProblem e) {
      throw new Problem.WrongUse(ExchangeSays.OWN_WRONG, name, Elsewhere.words(e));
    } catch (MethodException | IllegalArgumentException e) {
      throw new Problem.WrongUse(ExchangeSays.OWN_WRONG, name, Elsewhere.words(e));
    }
  }
}
