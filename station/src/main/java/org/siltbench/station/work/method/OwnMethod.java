package org.siltbench.station.work.method;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.MethodException;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.work.paper.PaperFile;

/** An own method, begun as a copy of another under a key of its own. */
public final class OwnMethod {

  private OwnMethod() {}

  /**
   * Writes it into the lab's folder of methods.
   *
   * @param text the numbers, with whatever key they had
   * @return the file
   */
  public static Path save(Path labFolder, MethodBook known, String key, String text) {
    String bare = key.strip();
    if (!bare.matches("[a-z0-9][a-z0-9.-]{1,39}")) {
      throw new Problem.WrongUse(MethodSays.NO_KEY, bare);
    }
    if (known.all().stream().anyMatch(method -> method.key().equals(bare))) {
      throw new Problem.Refused(MethodSays.EXISTS, bare);
    }
    String own = text.replaceFirst("(?m)^key\\s*=.*$", "key = " + bare);
    parse(own);
    Path folder = labFolder.resolve("methods");
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new Problem.Outside(e, MethodSays.FOLDER_NOT_MADE, folder, Elsewhere.words(e));
    }
    Path file = folder.resolve(bare + ".method");
    PaperFile.write(file, to -> to.write(own.getBytes(StandardCharsets.UTF_8)));
    return file;
  }

  private static void parse(String text) {
    try {
      Method unused = Method.parse(text);
    } catch (MethodException e) {
      throw new Problem.WrongUse(MethodSays.NUMBERS_WRONG, Elsewhere.words(e));
    }
  }
}
