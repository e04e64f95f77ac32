package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The pages: every link leads somewhere, every command written on them is one the program has. */
class DocsTest {

  private static final Path ROOT =
      Path.of(System.getProperty("siltbench.root", ".")).toAbsolutePath().normalize();
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)\\)");
  private static final Pattern SPAN = Pattern.compile("`([^`]+)`");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

  /** A page and its text without what is in fences. */
  private record Page(Path file, String text, List<String> fenced) {

    String prose() {
      return text.replaceAll("(?ms)^```.*?^```$", "");
    }
  }

  private static List<Page> pages() throws IOException {
    List<Page> out = new ArrayList<>();
    try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
      List<Path> all =
          new ArrayList<>(docs.filter(f -> f.toString().endsWith(".md")).sorted().toList());
      all.addAll(
          List.of(
              ROOT.resolve("README.md"),
              ROOT.resolve("DEVELOPERS.md"),
              ROOT.resolve("CHANGELOG.md")));
      for (Path file : all) {
        String text = Files.readString(file);
        out.add(new Page(file, text, fenced(text)));
      }
    }
    return out;
  }

  private static List<String> fenced(String text) {
    List<String> out = new ArrayList<>();
    boolean inside = false;
    for (String line : text.replace("\\\n", " ").lines().toList()) {
      if (line.startsWith("```")) {
        inside = !inside;
      } else if (inside) {
        out.add(line.strip());
      }
    }
    return out;
  }

  @Test
  void everyLinkLeadsToAFileAndAHeadingThatAreThere() throws IOException {
    List<String> dead = new ArrayList<>();
    int links = 0;
    for (Page page : pages()) {
      Matcher link = LINK.matcher(page.prose());
      while (link.find()) {
        links++;
        if (!leads(page.file(), link.group(1))) {
          dead.add(ROOT.relativize(page.file()) + ": " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), dead);
    assertTrue(links > 50, "links seen: " + links);
  }

  private static boolean leads(Path from, String target) throws IOException {
    if (target.startsWith("https://") || target.startsWith("http://")) {
      return true;
    }
    String[] parts = target.split("#", 2);
    Path file = parts[0].isEmpty() ? from : from.resolveSibling(parts[0]).normalize();
    if (!file.startsWith(ROOT) || !Files.exists(file)) {
      return false;
    }
    return parts.length == 1 || anchors(Files.readString(file)).contains(parts[1]);
  }

  private static Set<String> anchors(String text) {
    Set<String> out = new HashSet<>();
    text.lines()
        .filter(line -> line.startsWith("#"))
        .map(line -> line.replaceFirst("^#+\\s*", "").toLowerCase(Locale.ROOT))
        .map(line -> line.replaceAll("[^\\p{L}\\p{N} _-]", "").strip().replace(' ', '-'))
        .forEach(out::add);
    return out;
  }

  @Test
  void everyPageIsReachedFromAnother() throws IOException {
    Set<Path> reached = new HashSet<>();
    for (Page page : pages()) {
      Matcher link = LINK.matcher(page.text());
      while (link.find()) {
        reached.add(page.file().resolveSibling(link.group(1).split("#")[0]).normalize());
      }
    }
    List<Path> lonely =
        pages().stream()
            .map(Page::file)
            .filter(file -> file.startsWith(ROOT.resolve("docs")) && !reached.contains(file))
            .map(ROOT::relativize)
            .toList();
    assertEquals(List.of(), lonely);
  }

  @Test
  void everyCommandInAFenceIsUnderstoodWhole() throws IOException {
    List<String> wrong = new ArrayList<>();
    int commands = 0;
    for (Page page : pages()) {
      for (String line : page.fenced()) {
        Matcher command = Pattern.compile("(?:.* )?(?:\\./)?siltbench (.*)").matcher(line);
        if (!line.startsWith("#") && command.matches() && isOurs(command.group(1))) {
          commands++;
          understood(command.group(1).replaceFirst("\\s+(#|<|\\||>).*", ""))
              .ifPresent(why -> wrong.add(page.file().getFileName() + ": " + line + ": " + why));
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(commands > 25, "commands seen: " + commands);
  }

  /** A role or a format file may begin with the name too; the demonstration is not part of here. */
  private static boolean isOurs(String rest) {
    return rest.matches("[a-z].*")
        && !rest.startsWith("demo")
        && !rest.startsWith("--")
        && !rest.matches("(line format|capture) .*");
  }

  private static Optional<String> understood(String rest) {
    List<String> words = words(rest);
    Optional<CommandEntry> entry = entry(words);
    if (entry.isEmpty()) {
      return Optional.of("no such command");
    }
    CommandLine model = Program.model(entry.get(), entry.get().make().get(), new CommonOptions());
    int used = entry.get().words().split(" ").length;
    try {
      model.parseArgs(words.subList(used, words.size()).toArray(new String[0]));
      return Optional.empty();
    } catch (CommandLine.ParameterException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private static Optional<CommandEntry> entry(List<String> words) {
    return Main.offered().stream()
        .filter(
            entry -> {
              List<String> own = List.of(entry.words().split(" "));
              return words.size() >= own.size() && words.subList(0, own.size()).equals(own);
            })
        .max(java.util.Comparator.comparingInt(entry -> entry.words().length()));
  }

  private static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      words.add(
          matcher.group(1) != null
              ? matcher.group(1)
              : matcher.group(2) != null ? matcher.group(2) : matcher.group(3));
    }
    return words;
  }

  @Test
  void everyCommandAndOptionInASentenceExists() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Page page : pages()) {
      Matcher span = SPAN.matcher(page.prose());
      while (span.find()) {
        if (span.group(1).startsWith("siltbench ")) {
          String rest = span.group(1).substring(10).replace('\n', ' ');
          if (isOurs(rest)) {
            unknown(rest)
                .ifPresent(
                    why ->
                        wrong.add(page.file().getFileName() + ": " + span.group(1) + ": " + why));
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static Optional<String> unknown(String rest) {
    Optional<CommandEntry> entry = entry(words(rest));
    if (entry.isEmpty()) {
      boolean group =
          Main.offered().stream().anyMatch(e -> e.words().startsWith(words(rest).get(0)));
      return group ? Optional.empty() : Optional.of("no such command");
    }
    CommandLine model = Program.model(entry.get(), entry.get().make().get(), new CommonOptions());
    return words(rest).stream()
        .filter(word -> word.startsWith("--"))
        .map(word -> word.replaceFirst("=.*", "").replaceFirst("[,.…].*", ""))
        .filter(option -> model.getCommandSpec().findOption(option) == null)
        .findFirst()
        .map(option -> "no option " + option);
  }
}
