package org.siltbench.station.said;

import java.util.Locale;

/**
 * Names something that the bench says. Each package that says something has one enum of these and
 * the bundle {@code says} beside it, in English and in every other language.
 */
public interface Code {

  /** The constant's name. */
  String name();

  /** The enum it stands in. */
  Class<?> getDeclaringClass();

  /** The key of its sentences in the bundle. */
  default String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '.');
  }
}
