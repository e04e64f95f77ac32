package org.siltbench.calc.reason;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Why something cannot be.
 *
 * @param code what is the matter
 * @param gaps what is filled in for {0}, {1}, …; a reason or an exception among them is itself told
 *     in the language asked for
 */
public record Reason(ReasonCode code, List<Object> gaps) {

  private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

  /** An unmodifiable copy. */
  public Reason {
    gaps = List.copyOf(gaps);
  }

  /** As it came from outside: from the system, a library, a balance. */
  public static Reason plain(String text) {
    return Outside.AS_IT_CAME.with(text);
  }

  /** What an exception says. */
  public static Reason of(Throwable e) {
    return e instanceof Reasoned known ? known.reason() : plain(String.valueOf(e.getMessage()));
  }

  /** In English, as commands and scripts read it. */
  public String english() {
    Matcher gap = GAP.matcher(code.english());
    StringBuilder out = new StringBuilder();
    while (gap.find()) {
      int at = Integer.parseInt(gap.group(1));
      Object value = at < gaps.size() ? gaps.get(at) : gap.group();
      gap.appendReplacement(out, Matcher.quoteReplacement(text(value)));
    }
    return gap.appendTail(out).toString();
  }

  private static String text(Object value) {
    return value instanceof Throwable e ? of(e).english() : String.valueOf(value);
  }

  @Override
  public String toString() {
    return english();
  }

  /** Words of others, the same in every language. */
  public enum Outside implements ReasonCode {
    /** Not ours to translate. */
    AS_IT_CAME;

    @Override
    public String english() {
      return "{0}";
    }
  }
}
