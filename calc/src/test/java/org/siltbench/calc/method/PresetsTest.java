package org.siltbench.calc.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

final class PresetsTest {

  static final List<String> KEYS = Presets.KEYS;

  @ParameterizedTest
  @FieldSource("KEYS")
  void each_preset_reads_and_its_canonical_text_reads_back_the_same(String key) {
    Method method = Method.parse(Presets.text(key));
    assertEquals(key, method.key());
    assertEquals(method, Method.parse(method.text()));
    assertEquals(method.text(), Method.parse(method.text()).text());
  }

  @Test
  void there_are_presets_for_the_keys_that_scripts_rely_on() {
    for (String key :
        List.of("epa-160.2", "sm-2540d-22", "sm-2540d-23", "iso-11923", "astm-d3977-b")) {
      assertEquals(key, Methods.presets().get(key).key());
    }
    assertThrows(IllegalArgumentException.class, () -> Presets.text("nonsense"));
  }

  @Test
  void an_unknown_key_names_its_neighbours() {
    UnknownMethodException e =
        assertThrows(UnknownMethodException.class, () -> Methods.presets().get("SM-2540-22"));
    assertTrue(e.near().contains("sm-2540d-22"), e.near().toString());
    assertTrue(e.getMessage().contains("sm-2540d-22"), e.getMessage());
    assertEquals(3, e.near().size());
  }

  @Test
  void an_own_method_stands_beside_the_presets_and_may_replace_one() {
    Method own = Method.parse(Presets.text("epa-160.2").replace("key = epa-160.2", "key = ours"));
    Methods methods = Methods.presets().with(List.of(own));
    assertEquals(own, methods.get("ours"));
    assertEquals(Presets.KEYS.size() + 1, methods.all().size());
    Method replaced =
        Method.parse(Presets.text("epa-160.2").replace("report_digits = 3", "report_digits = 2"));
    assertEquals(2, Methods.presets().with(List.of(replaced)).get("epa-160.2").report().digits());
  }
}
