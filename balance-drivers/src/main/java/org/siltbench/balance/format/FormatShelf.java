package org.siltbench.balance.format;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.calc.reason.Reason;

/** The folder of saved line formats; each is one small text file. */
public final class FormatShelf {

  private static final String SUFFIX = ".lineformat";
  private static final long LARGEST = 64 * 1024;

  private final Path folder;

  /** Formats in a folder, which need not exist yet. */
  public FormatShelf(Path folder) {
    this.folder = folder;
  }

  /**
   * A format by its saved name, or by the path of a file.
   *
   * @throws BalanceException if there is none or it cannot be read
   */
  public LineFormat load(String nameOrPath) throws IOException {
    Path file = file(nameOrPath);
    if (Files.size(file) > LARGEST) {
      throw new BalanceException(
          BalanceSays.FORMAT_LARGE.with(file), BalanceSays.ANOTHER_FILE.with());
    }
    try {
      return FormatText.parse(Files.readString(file));
    } catch (CharacterCodingException e) {
      throw new BalanceException(
          BalanceSays.FORMAT_NOT_TEXT.with(file), BalanceSays.ANOTHER_FILE.with(), e);
    } catch (FormatException e) {
      throw new BalanceException(
          BalanceSays.FORMAT_LINE.with(file, e), BalanceSays.CORRECT_LINE.with(), e);
    }
  }

  private Path file(String nameOrPath) throws IOException {
    try {
      Path saved = folder.resolve(nameOrPath + SUFFIX);
      Path path = Path.of(nameOrPath);
      if (isName(nameOrPath) && Files.isRegularFile(saved)) {
        return saved;
      }
      if (Files.isRegularFile(path)) {
        return path;
      }
    } catch (InvalidPathException notAPath) {
      // falls through to the message: it is no name either
    }
    throw new BalanceException(BalanceSays.NO_FORMAT.with(nameOrPath), known());
  }

  private Reason known() throws IOException {
    List<String> names = names();
    return names.isEmpty()
        ? BalanceSays.NONE_SAVED.with()
        : BalanceSays.SAVED_ARE.with(String.join(", ", names));
  }

  /** True for a name under which a format can be saved: letters, digits, dash, dot, underscore. */
  public static boolean isName(String text) {
    return text.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");
  }

  /** The saved names, sorted. */
  public List<String> names() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(SUFFIX))
          .map(f -> f.substring(0, f.length() - SUFFIX.length()))
          .sorted()
          .toList();
    }
  }

  /** Saves a format under its name, in one step, and says where. */
  public Path save(LineFormat format) throws IOException {
    if (!isName(format.name())) {
      throw new IllegalArgumentException(
          "a format's name has letters, digits, dash, dot, underscore: " + format.name());
    }
    Files.createDirectories(folder);
    Path part = Files.createTempFile(folder, "saving-", ".part");
    Files.writeString(part, FormatText.print(format), StandardCharsets.UTF_8);
    Path file = folder.resolve(format.name() + SUFFIX);
    return Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
  }
}
