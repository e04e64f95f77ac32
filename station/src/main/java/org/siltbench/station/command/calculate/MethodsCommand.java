package org.siltbench.station.command.calculate;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.paper.PaperFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code methods}. */
final class MethodsCommand implements Task {

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "KEY",
      description = "show this one's numbers")
  private @Nullable String key;

  @Option(
      names = "--save",
      paramLabel = "F.method",
      description = "with KEY: write its text there, to be changed into an own method")
  private @Nullable Path save;

  @Override
  public int run(Session session) {
    return key == null ? list(session) : show(session, session.methods().get(key));
  }

  private static int list(Session session) {
    List<Map<String, @Nullable Object>> document = new ArrayList<>();
    for (Method method : session.methods().all()) {
      document.add(fields(method));
      session.fact(
          String.format(
              "%-16s %s (%s, %s)",
              method.key(), method.title(), method.standard(), method.edition()));
    }
    session.document(document);
    session.message(
        "Own methods are files KEY.method in "
            + session.labFolder().resolve("methods")
            + "; start from siltbench methods KEY --save F.method.");
    return 0;
  }

  private int show(Session session, Method method) {
    if (session.json()) {
      Map<String, @Nullable Object> document = fields(method);
      document.put("numbers", numbers(method));
      session.document(document);
    } else {
      method.text().lines().forEach(session::fact);
    }
    Path file = save;
    if (file != null) {
      PaperFile.write(file, to -> to.write(method.text().getBytes(StandardCharsets.UTF_8)));
      session.message("Written to " + file + ". Give it a key of its own before you use it.");
    }
    return 0;
  }

  private static Map<String, @Nullable Object> fields(Method method) {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("key", method.key());
    fields.put("title", method.title());
    fields.put("standard", method.standard());
    fields.put("edition", method.edition());
    fields.put("parameter", method.parameter().title());
    fields.put("taken", method.taken().word());
    return fields;
  }

  private static Map<String, String> numbers(Method method) {
    Map<String, String> out = new LinkedHashMap<>();
    for (String line : method.text().split("\n")) {
      int equals = line.indexOf('=');
      if (equals > 0) {
        out.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
      }
    }
    return out;
  }
}
