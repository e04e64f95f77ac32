package org.siltbench.station.work.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.said.Said;

/**
 * Reads field notes as people make them. It proposes how to read the file, shows every doubt, and
 * remembers per lab what was settled for files with the same columns. It records nothing.
 */
public final class FieldImport {

  private final Remembered memory;

  /** For a lab, which remembers. */
  public FieldImport(Path labFolder) {
    this.memory = new Remembered(labFolder);
  }

  /** How the file would be read with these answers, and with those of an earlier time. */
  public Preview look(Path file, Answers given) throws IOException {
    List<org.siltbench.station.said.Words> notes = new ArrayList<>();
    Optional<Remembered.Entry> before = memory.find(signature(file));
    Answers answers = before.map(entry -> given.over(entry.answers())).orElse(given);
    before.ifPresent(
        entry ->
            notes.add(
                entry.answers().given().isEmpty()
                    ? Said.of(ExchangeSays.NOTE_READ_AS_ON, entry.day())
                    : Said.of(
                        ExchangeSays.NOTE_READ_AS_ON_WITH,
                        entry.day(),
                        Remembered.words(entry.answers()))));
    return look(file, answers, notes);
  }

  private static Preview look(
      Path file, Answers answers, List<org.siltbench.station.said.Words> notes) throws IOException {
    List<Doubt> doubts = new ArrayList<>();
    Decoded decoded = Decoded.of(file, answers.of("charset"));
    Grid grid = Grid.of(decoded.text(), answers.of("separator"));
    Head head = Head.of(grid, answers);
    FileDoubts.of(decoded, grid, doubts);
    head.before().forEach(line -> notes.add(Said.of(ExchangeSays.NOTE_PASSED_OVER, line.number())));
    List<Heading> headings = Headings.of(head, answers, doubts);
    HeadingNotes.of(headings, notes);
    List<Preview.Line> rows = new Body(headings, head.body(), answers, notes, doubts).read();
    return new Preview(
        file,
        decoded.charset().name(),
        Grid.word(grid.separator()),
        headings,
        notes,
        doubts,
        rows,
        answers);
  }

  /** Keeps what was settled, for the next file with these columns. */
  public void remember(Preview taken, Clock clock) throws IOException {
    memory.keep(signature(taken.file()), taken.answers().lasting(), clock);
  }

  /** The names of the columns as they are found without any answer. */
  private static String signature(Path file) throws IOException {
    Grid grid = Grid.of(Decoded.of(file, Optional.empty()).text(), Optional.empty());
    return Head.find(grid)
        .map(Head::names)
        .orElseGet(() -> grid.lines().isEmpty() ? List.of() : grid.lines().get(0).cells())
        .stream()
        .map(Columns::plain)
        .collect(java.util.stream.Collectors.joining("|"));
  }
}
