package org.siltbench.station.work.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.work.method.MethodBook;

/** Formats, methods and stock leave one lab and come into another as they stand. */
class OwnFilesTest {

  @TempDir Path folder;

  private OwnFiles lab(String name) throws IOException {
    return new OwnFiles(Files.createDirectories(folder.resolve(name)));
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(Files.createDirectories(folder.resolve("from")).resolve(name), text);
  }

  @Test
  void a_preset_given_out_under_a_new_key_comes_into_another_lab_and_out_again() throws Exception {
    Path out = lab("one").give("epa-160.2.method", folder.resolve("out"));
    String mine = Files.readString(out).replaceFirst("(?m)^key *= *.*$", "key = mine");
    Path taken = lab("two").take(file("mine.method", mine));
    assertEquals(folder.resolve("two/methods/mine.method"), taken);
    assertEquals(taken, lab("two").take(file("mine.method", mine)), "again changes nothing");
    Path again = lab("two").give("mine.method", folder.resolve("out"));
    assertEquals(mine, Files.readString(again));
    assertTrue(lab("two").names().contains("mine.method"));
  }

  @Test
  void what_makes_no_sense_is_refused_and_nothing_is_kept() throws Exception {
    OwnFiles lab = lab("lab");
    for (String name : new String[] {"a.method", "a.media", "a.lineformat", "a.txt"}) {
      Path bad = file(name, "nothing of ours\n");
      assertThrows(Problem.WrongUse.class, () -> lab.take(bad), name);
    }
    assertFalse(Files.exists(folder.resolve("lab/methods")));
    assertThrows(Problem.Outside.class, () -> lab.take(folder.resolve("none.media")));
  }

  @Test
  void another_file_of_a_known_name_never_replaces_the_first() throws Exception {
    OwnFiles lab = lab("lab");
    String text = MethodBook.of(folder).get("epa-160.2").text();
    Path same = file("epa-160.2.method", text + "# changed\n");
    assertThrows(Problem.Refused.class, () -> lab.take(same));
  }

  @Test
  void stock_is_taken_in_and_a_name_that_is_not_kept_is_told_with_those_that_are()
      throws Exception {
    OwnFiles lab = lab("lab");
    assertThrows(Problem.WrongUse.class, () -> lab.give("mine.media", folder));
    assertThrows(Problem.WrongUse.class, () -> lab.give("../lab.json", folder));
  }
}
