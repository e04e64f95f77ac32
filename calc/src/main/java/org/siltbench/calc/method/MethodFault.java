package org.siltbench.calc.method;

/**
 * One thing wrong in a method's text.
 *
 * @param line the line, from 1; 0 where a key is missing
 * @param key the key
 * @param expected what should stand there
 * @param found what stands there; empty where nothing does
 */
public record MethodFault(int line, String key, String expected, String found) {

  @Override
  public String toString() {
    String where = line == 0 ? "" : "line " + line + ", ";
    String what = found.isEmpty() ? "missing" : "found \"" + found + '"';
    return where + key + ": " + what + ", expected " + expected;
  }
}
