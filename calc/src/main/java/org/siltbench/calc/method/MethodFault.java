package org.siltbench.calc.method;

import org.siltbench.calc.reason.Reason;

/**
 * One thing wrong in a method's text.
 *
 * @param line the line, from 1; 0 where a key is missing
 * @param key the key, or {@link #NO_KEY}
 * @param wanted what should stand there
 * @param there what stands there; empty where nothing does
 */
record MethodFault(int line, String key, Reason wanted, Reason there) {

  /** Stands for the key of a line that has none. */
  static final String NO_KEY = "(no key)";

  MethodFault(int line, String key, Reason wanted, String there) {
    this(line, key, wanted, Reason.plain(there));
  }

  String expected() {
    return wanted.english();
  }

  String found() {
    return there.english();
  }

  Reason reason() {
    Object name = key.equals(NO_KEY) ? MethodTextSays.NO_KEY.with() : key;
    Reason what =
        found().isEmpty() ? MethodTextSays.MISSING.with() : MethodTextSays.FOUND.with(there);
    return line == 0
        ? MethodTextSays.FAULT.with(name, what, wanted)
        : MethodTextSays.FAULT_AT.with(line, name, what, wanted);
  }

  @Override
  public String toString() {
    return reason().english();
  }
}
