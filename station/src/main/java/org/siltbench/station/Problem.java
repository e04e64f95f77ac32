package org.siltbench.station;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.said.Code;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * Something the person must know: what happened, what is safe, what to do next. Each part is a
 * short sentence. A problem that the window can meet carries a code, so that it is told in the
 * person's language; what only a command can meet is in English.
 */
public abstract sealed class Problem extends RuntimeException implements Words {

  private static final long serialVersionUID = 1L;

  /** The three parts in one language. */
  private interface Parts {
    String part(String part, Locale language);
  }

  private final transient Parts words;

  private Problem(Parts words, @Nullable Throwable cause) {
    super(
        join(
            words.part("what", Locale.ENGLISH),
            words.part("safe", Locale.ENGLISH),
            words.part("next", Locale.ENGLISH)),
        cause);
    this.words = words;
  }

  private static Parts plain(String what, String safe, String next) {
    return (part, language) ->
        switch (part) {
          case "what" -> what;
          case "safe" -> safe;
          default -> next;
        };
  }

  private static String join(String what, String safe, String next) {
    StringBuilder text = new StringBuilder(what);
    for (String part : new String[] {safe, next}) {
      if (!part.isEmpty()) {
        text.append(' ').append(part);
      }
    }
    return text.toString();
  }

  /** What happened, in English. */
  public final String what() {
    return what(Locale.ENGLISH);
  }

  /** What happened. */
  public final String what(Locale language) {
    return words.part("what", language);
  }

  /** What is safe, in English; may be empty where nothing was at stake. */
  public final String safe() {
    return safe(Locale.ENGLISH);
  }

  /** What is safe; may be empty where nothing was at stake. */
  public final String safe(Locale language) {
    return words.part("safe", language);
  }

  /** What to do next, in English. */
  public final String next() {
    return next(Locale.ENGLISH);
  }

  /** What to do next. */
  public final String next(Locale language) {
    return words.part("next", language);
  }

  /** What happened, in any language. */
  public final Words happened() {
    return this::what;
  }

  /** What to do next, in any language. */
  public final Words wayOut() {
    return this::next;
  }

  @Override
  public final String in(Locale language) {
    return join(what(language), safe(language), next(language));
  }

  /** The exit status of a command that ends with this problem. */
  public abstract int exitStatus();

  /** Refused by a rule of the job: exit 1. */
  public static final class Refused extends Problem {
    private static final long serialVersionUID = 1L;

    /** In the person's language. */
    public Refused(Code code, @Nullable Object... gaps) {
      super(Said.of(code, gaps)::part, null);
    }

    /** For commands: in English. */
    public Refused(String what, String safe, String next) {
      super(plain(what, safe, next), null);
    }

    @Override
    public int exitStatus() {
      return 1;
    }
  }

  /** The words or the table given to the bench make no sense: exit 2. */
  public static final class WrongUse extends Problem {
    private static final long serialVersionUID = 1L;

    /** In the person's language. */
    public WrongUse(Code code, @Nullable Object... gaps) {
      super(Said.of(code, gaps)::part, null);
    }

    /** For commands: in English. */
    public WrongUse(String what, String next) {
      super(plain(what, "", next), null);
    }

    @Override
    public int exitStatus() {
      return 2;
    }
  }

  /** A cable, a disk, a printer, a server failed: exit 3. */
  public static final class Outside extends Problem {
    private static final long serialVersionUID = 1L;

    /** In the person's language. */
    public Outside(@Nullable Throwable cause, Code code, @Nullable Object... gaps) {
      super(Said.of(code, gaps)::part, cause);
    }

    /** For commands: in English. */
    public Outside(String what, String safe, String next, @Nullable Throwable cause) {
      super(plain(what, safe, next), cause);
    }

    @Override
    public int exitStatus() {
      return 3;
    }
  }
}
