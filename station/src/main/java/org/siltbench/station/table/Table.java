package org.siltbench.station.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/**
 * A table in a text file, streamed: UTF-8 with or without a byte order mark, cells separated by
 * comma, semicolon or tab (told from the first line), one header line. Memory does not grow with
 * the file.
 */
public final class Table implements AutoCloseable, Iterator<Row> {

  private static final int MAX_COLUMNS = 200;
  private static final int MAX_CELL = 1 << 16;
  private static final int SNIFF = 1 << 16;

  private final Path file;
  private final BufferedReader text;
  private final CsvReader<CsvRecord> reader;
  private final Iterator<CsvRecord> records;
  private final Header header;

  private Table(Path file, BufferedReader text) throws IOException {
    this.file = file;
    this.text = text;
    char separator = separator(text);
    this.reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .skipEmptyLines(true)
            .maxBufferSize(MAX_CELL)
            .ofCsvRecord(text);
    this.records = reader.iterator();
    this.header = header(separator);
  }

  /**
   * Opens a table and reads its header.
   *
   * @throws Problem.WrongUse if it is no table: empty, not UTF-8, two columns of one name
   */
  public static Table open(Path file) throws IOException {
    try {
      var decoder =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT);
      return open(
          file,
          new BufferedReader(new InputStreamReader(Files.newInputStream(file), decoder), SNIFF));
    } catch (NoSuchFileException e) {
      throw new Problem.WrongUse(TableSays.NO_FILE, file);
    }
  }

  /**
   * A table that is in memory.
   *
   * @param file what messages call it
   */
  public static Table of(Path file, String text) throws IOException {
    return open(file, new BufferedReader(new StringReader(text), SNIFF));
  }

  private static Table open(Path file, BufferedReader text) throws IOException {
    try {
      return new Table(file, text);
    } catch (CharacterCodingException e) {
      text.close();
      throw notUtf8(file);
    } catch (RuntimeException | IOException e) {
      text.close();
      throw e;
    }
  }

  /** Skips a byte order mark and looks at the first line. */
  private static char separator(BufferedReader text) throws IOException {
    text.mark(1);
    if (text.read() != '\uFEFF') {
      text.reset();
    }
    text.mark(SNIFF);
    int commas = 0;
    int semicolons = 0;
    int tabs = 0;
    int c = text.read();
    for (int i = 0; i < SNIFF - 1 && c >= 0 && c != '\n' && c != '\r'; i++) {
      commas += c == ',' ? 1 : 0;
      semicolons += c == ';' ? 1 : 0;
      tabs += c == '\t' ? 1 : 0;
      c = text.read();
    }
    text.reset();
    if (semicolons > commas && semicolons >= tabs) {
      return ';';
    }
    return tabs > commas ? '\t' : ',';
  }

  private Header header(char separator) {
    if (!hasNext()) {
      throw new Problem.WrongUse(TableSays.EMPTY, file);
    }
    CsvRecord first = records.next();
    if (first.getFieldCount() > MAX_COLUMNS) {
      throw new Problem.WrongUse(TableSays.TOO_WIDE, file, first.getFieldCount(), MAX_COLUMNS);
    }
    return Header.of(file, first.getFields(), separator);
  }

  /** The file it is read from. */
  public Path file() {
    return file;
  }

  /** The names of the columns, in order. */
  public List<String> columns() {
    return header.names();
  }

  /** The place of a column, or -1. */
  public int column(String name) {
    return header.indexOf(name);
  }

  /** The place of a column that must be there. */
  public int require(String name) {
    int at = column(name);
    if (at < 0) {
      throw new Problem.WrongUse(TableSays.NO_COLUMN, file, name, String.join(", ", columns()));
    }
    return at;
  }

  @Override
  public boolean hasNext() {
    try {
      return records.hasNext();
    } catch (CsvParseException | UncheckedIOException e) {
      throw broken(e);
    }
  }

  @Override
  public Row next() {
    try {
      CsvRecord record = records.next();
      return new Row(header, record.getStartingLineNumber(), record.getFields()).checked();
    } catch (NoSuchElementException e) {
      throw e;
    } catch (CsvParseException | UncheckedIOException e) {
      throw broken(e);
    }
  }

  private RuntimeException broken(RuntimeException e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof CharacterCodingException) {
        return notUtf8(file);
      }
    }
    if (e instanceof UncheckedIOException) {
      return new Problem.Outside(e, TableSays.UNREADABLE, file, Elsewhere.words(e));
    }
    return new Problem.WrongUse(TableSays.MALFORMED, file, reason(e));
  }

  private static String reason(RuntimeException e) {
    Throwable deepest = e;
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      deepest = cause;
    }
    return e.getMessage() + (deepest == e ? "" : " (" + deepest.getMessage() + ")");
  }

  private static Problem.WrongUse notUtf8(Path file) {
    return new Problem.WrongUse(TableSays.NOT_UTF8, file);
  }

  @Override
  public void close() throws IOException {
    reader.close();
    text.close();
  }
}
