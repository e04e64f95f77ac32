package org.siltbench.station.work.method;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.MethodException;
import org.siltbench.calc.method.Methods;
import org.siltbench.calc.method.UnknownMethodException;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;

/**
 * The methods a lab knows. A method's numbers are frozen into the ledger when a batch first uses
 * it; from then on those count, whatever becomes of the file.
 */
public final class MethodBook {

  private static final String SUFFIX = ".method";
  private static final int MOST_BYTES = 64 * 1024;

  private final Methods methods;

  private MethodBook(Methods methods) {
    this.methods = methods;
  }

  /** The presets, and the files {@code *.method} in the lab's folder {@code methods}. */
  public static MethodBook of(Path labFolder) {
    Path folder = labFolder.resolve("methods");
    return new MethodBook(
        Files.isDirectory(folder) ? Methods.presets().with(own(folder)) : Methods.presets());
  }

  private static List<Method> own(Path folder) {
    List<Method> own = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + SUFFIX)) {
      for (Path file : files) {
        own.add(read(file));
      }
    } catch (IOException e) {
      throw new Problem.Outside(e, MethodSays.FOLDER_UNREADABLE, folder);
    }
    return own;
  }

  /** Reads one method file. */
  public static Method read(Path file) {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new Problem.WrongUse(MethodSays.TOO_LARGE, file);
      }
      return Method.parse(Files.readString(file, StandardCharsets.UTF_8));
    } catch (MethodException e) {
      throw new Problem.WrongUse(MethodSays.FILE_WRONG, file, Elsewhere.words(e));
    } catch (IOException e) {
      throw new Problem.Outside(e, MethodSays.FILE_UNREADABLE, file);
    }
  }

  /** All known methods, presets first. */
  public List<Method> all() {
    return methods.all();
  }

  /**
   * The method of a key as it stands in its file.
   *
   * @throws Problem.WrongUse if there is none
   */
  public Method get(String key) {
    try {
      return methods.get(key);
    } catch (UnknownMethodException e) {
      throw new Problem.WrongUse(MethodSays.NO_METHOD, key, String.join(", ", e.near()));
    }
  }

  /** The numbers in force: those frozen at first use, else those of the file. */
  public Method inForce(RegisterView register, String key) {
    return frozen(register, key)
        .map(fields -> Method.parse(fields.text("text")))
        .orElseGet(() -> get(key));
  }

  /**
   * The entry that freezes a method; none where that was done before.
   *
   * @throws Problem.Refused if the file has changed since
   */
  public List<Draft> adopt(RegisterView register, String key) {
    Optional<Fields> frozen = frozen(register, key);
    if (frozen.isEmpty()) {
      String text = get(key).text();
      return List.of(
          new Facts()
              .put("key", key)
              .put("text", text)
              .put("hash", hash(text))
              .draft("method.adopted"));
    }
    boolean known = methods.all().stream().anyMatch(method -> method.key().equals(key));
    if (known && !hash(get(key).text()).equals(frozen.get().text("hash"))) {
      throw new Problem.Refused(MethodSays.CHANGED, key);
    }
    return List.of();
  }

  private static Optional<Fields> frozen(RegisterView register, String key) {
    return adopted(register, key).map(Fields::of);
  }

  /** The frozen entry of a method, for papers. */
  public static Optional<Entry> adopted(RegisterView register, String key) {
    return register.history(About.method(key)).stream()
        .filter(entry -> entry.kind().equals("method.adopted"))
        .findFirst();
  }

  private static String hash(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
