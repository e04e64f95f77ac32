package org.siltbench.station.command;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that every command has. */
final class CommonOptions {

  @Option(
      names = "--lab",
      paramLabel = "DIR",
      description = "the lab folder; default: ~/.siltbench")
  @Nullable Path lab;

  @Option(
      names = "--json",
      description = "print one JSON document, and nothing else, on standard output")
  boolean json;

  @Option(
      names = "--events",
      description = "print one JSON object a line on standard error as things happen")
  boolean events;

  @Option(
      names = "--operator",
      paramLabel = "INITIALS",
      description = "who works; default: the system's user")
  @Nullable String operator;

  @Option(
      names = "--pin-file",
      paramLabel = "FILE",
      description =
          "file with the operator's PIN, where the lab asks for one; else the variable"
              + " SILTBENCH_PIN, else the terminal is asked")
  @Nullable Path pinFile;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "show this and stop")
  boolean help;
}
