package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * docs/commands.md lists every command with its options as the program has them. With {@code
 * -Dsiltbench.docs.write=true} the tables are written anew and the examples kept.
 */
class CommandDocsTest {

  private static final Path FILE =
      Path.of(System.getProperty("siltbench.root", ".")).resolve("docs/commands.md");
  private static final String START = "<!-- commands, written from the program -->";
  private static final String END = "<!-- end of commands -->";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @Test
  void every_command_stands_in_the_docs_as_the_program_has_it() throws IOException {
    String text = Files.readString(FILE);
    Map<String, List<String>> examples = examples(text);
    StringBuilder sections = new StringBuilder();
    for (CommandEntry entry : Main.offered()) {
      sections.append(section(entry, examples.getOrDefault(entry.words(), List.of())));
    }
    String head = text.substring(0, text.indexOf(START) + START.length());
    String tail = text.substring(text.indexOf(END));
    String expected = head + "\n" + sections + "\n" + tail;
    if (Boolean.getBoolean("siltbench.docs.write")) {
      Files.writeString(FILE, expected);
    }
    assertEquals(
        expected, Files.readString(FILE), "write them anew with -Dsiltbench.docs.write=true");
  }

  @Test
  void every_command_has_an_example_that_the_program_understands() throws IOException {
    Map<String, List<String>> examples = examples(Files.readString(FILE));
    for (CommandEntry entry : Main.offered()) {
      List<String> lines = examples.getOrDefault(entry.words(), List.of());
      assertFalse(lines.isEmpty(), "an example for " + entry.words());
      for (String line : lines) {
        CommandLine model = Program.model(entry, entry.make().get(), new CommonOptions());
        String prefix = "siltbench " + entry.words();
        assertEquals(prefix, line.substring(0, Math.min(prefix.length(), line.length())), line);
        model.parseArgs(words(line.substring(prefix.length())));
      }
    }
  }

  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line.replaceFirst("\\s[<|].*", ""));
    while (matcher.find()) {
      words.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
    }
    return words.toArray(new String[0]);
  }

  /** The indented lines under each heading. */
  private static Map<String, List<String>> examples(String text) {
    Map<String, List<String>> out = new LinkedHashMap<>();
    String heading = "";
    for (String line : text.lines().toList()) {
      if (line.startsWith("## ")) {
        heading = line.substring(3).strip();
      } else if (line.startsWith("    siltbench ")) {
        out.computeIfAbsent(heading, h -> new ArrayList<>()).add(line.strip());
      }
    }
    return out;
  }

  private static String section(CommandEntry entry, List<String> examples) {
    CommandSpec spec =
        Program.model(entry, entry.make().get(), new CommonOptions()).getCommandSpec();
    StringBuilder out = new StringBuilder();
    out.append("\n## ").append(entry.words()).append("\n\n");
    out.append(sentence(entry.summary())).append("\n\n");
    List<ArgSpec> args = new ArrayList<>();
    spec.positionalParameters().stream().forEach(args::add);
    spec.options().stream()
        .filter(option -> !spec.mixins().get("common").options().contains(option))
        .forEach(args::add);
    if (!args.isEmpty()) {
      out.append("| option | |\n| --- | --- |\n");
      args.forEach(arg -> out.append(row(arg)));
      out.append('\n');
    }
    examples.forEach(line -> out.append("    ").append(line).append('\n'));
    return out.toString();
  }

  private static String sentence(String summary) {
    return Character.toUpperCase(summary.charAt(0))
        + summary.substring(1)
        + (summary.endsWith("?") ? "" : ".");
  }

  private static String row(ArgSpec arg) {
    String name =
        arg instanceof OptionSpec option
            ? String.join(", ", option.names())
            : ((PositionalParamSpec) arg).paramLabel();
    boolean flag = arg.arity().max() == 0;
    String label = arg.isOption() && !flag ? " " + arg.paramLabel() : "";
    String text =
        java.util.Arrays.stream(arg.description())
            .map(line -> line.replace("%%", "%"))
            .map(line -> line.replace("${DEFAULT-VALUE}", arg.defaultValueString(true)))
            .collect(Collectors.joining(" "));
    String must = arg.required() ? " (required)" : "";
    return "| `" + name + label + "` | " + text.replace("|", "\\|") + must + " |\n";
  }
}
