package org.siltbench.calc.method;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The methods a bench knows: the presets, and the laboratory's own beside them. */
public final class Methods {

  private static final int NEAR = 3;

  private final Map<String, Method> byKey = new LinkedHashMap<>();

  private Methods(Collection<Method> methods) {
    methods.forEach(method -> byKey.put(method.key(), method));
  }

  /** The presets that come with the program. */
  public static Methods presets() {
    return new Methods(Presets.all());
  }

  /** These methods and the given ones; an own method replaces a preset of the same key. */
  public Methods with(Collection<Method> own) {
    List<Method> all = new ArrayList<>(byKey.values());
    all.addAll(own);
    return new Methods(all);
  }

  /**
   * The method of a key.
   *
   * @throws UnknownMethodException if there is none; it names the nearest keys
   */
  public Method get(String key) {
    Method method = byKey.get(key);
    if (method == null) {
      throw new UnknownMethodException(key, NearNames.of(key, byKey.keySet(), NEAR));
    }
    return method;
  }

  /** All methods in order: presets first. */
  public List<Method> all() {
    return List.copyOf(byKey.values());
  }
}
