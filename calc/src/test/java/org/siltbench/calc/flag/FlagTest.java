package org.siltbench.calc.flag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

final class FlagTest {

  @Test
  void the_page_of_flags_is_the_list_of_flags() throws IOException {
    Path page = Path.of(System.getProperty("siltbench.root", ".."), "docs", "flags.md");
    List<String> rows = Files.readAllLines(page).stream().filter(l -> l.startsWith("| `")).toList();
    List<String> expected = Arrays.stream(Flag.values()).map(FlagTest::row).toList();
    assertEquals(String.join("\n", expected), String.join("\n", rows));
  }

  private static String row(Flag flag) {
    return "| `"
        + flag.word()
        + "` | "
        + flag.level().name().toLowerCase(Locale.ROOT)
        + " | "
        + flag.means()
        + " |";
  }

  @Test
  void words_are_joined_in_the_order_of_the_list() {
    Flag first = Flag.values()[0];
    Flag second = Flag.values()[1];
    assertEquals("", Flag.join(List.of()));
    assertEquals(first.word(), Flag.join(List.of(first)));
    assertEquals(first.word() + ";" + second.word(), Flag.join(List.of(second, first)));
  }

  @Test
  void words_are_plain_and_read_back() {
    for (Flag flag : Flag.values()) {
      assertTrue(flag.word().matches("[a-z]+(-[a-z]+)*"), flag.word());
      assertEquals(flag, Flag.of(flag.word()));
      assertTrue(flag.means().endsWith(".") || flag.means().endsWith("?"), flag.means());
    }
    assertThrows(IllegalArgumentException.class, () -> Flag.of("fine"));
  }

  @Test
  void flags_are_joined_in_the_order_of_the_list_each_once() {
    assertEquals("", Flag.join(List.of()));
    assertEquals("negative;torn", Flag.join(List.of(Flag.TORN, Flag.NEGATIVE, Flag.TORN)));
  }
}
