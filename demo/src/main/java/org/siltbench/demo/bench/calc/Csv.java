package org.siltbench.demo.bench.calc;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.siltbench.calc.method.Method;
import org.siltbench.station.work.calculate.Calculation;
import org.siltbench.station.work.calculate.CsvSink;

/** A table of many rows: calculated, and merely read and written with the same library. */
final class Csv implements AutoCloseable {

  private final Path folder;
  private final Path table;
  private final Method method;

  Csv(int rows, Method method) {
    this.method = method;
    try {
      folder = Files.createTempDirectory("siltbench-csv");
      table = folder.resolve("rows.csv");
      write(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(int rows) throws IOException {
    Random random = new Random(5);
    try (Writer out = Files.newBufferedWriter(table)) {
      out.write("filter,role,site,pre_g,post_g,volume_ml,volume_u_ml,remarks\n");
      for (int i = 0; i < rows; i++) {
        double pre = 0.12 + random.nextInt(80) / 10_000.0;
        double post = pre + (50 + random.nextInt(900)) / 10_000.0;
        out.write(
            String.format(
                Locale.ROOT,
                "F%07d,%s,Alder Fork %d,%.4f,%.4f,%d,2,clear %d%n",
                i,
                i % 20 == 0 ? "method-blank" : "sample",
                i % 3,
                pre,
                i % 20 == 0 ? pre : post,
                200 + random.nextInt(300),
                i % 7));
      }
    }
  }

  /** Reads every record and writes it again; the number of bytes written. */
  double copy(long round) {
    Path to = folder.resolve("copy.csv");
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(table);
        CsvWriter writer = CsvWriter.builder().build(to)) {
      for (CsvRecord line : reader) {
        writer.writeRecord(line.getFields());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return size(to);
  }

  /** Calculates every row into a file, as {@code calc --out}; the number of bytes written. */
  double calculate(long round) {
    Path to = folder.resolve("results.csv");
    try (Writer out = Files.newBufferedWriter(to)) {
      new Calculation(table, method).runDiscardably(new CsvSink(out, method.report().digits()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return size(to);
  }

  /**
   * The same for a reader that must not see a result before the whole table is known to be sound.
   */
  double calculateHeldBack(long round) {
    Path to = folder.resolve("results.csv");
    try (Writer out = Files.newBufferedWriter(to)) {
      new Calculation(table, method).run(new CsvSink(out, method.report().digits()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return size(to);
  }

  private static double size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    for (String name : List.of("rows.csv", "copy.csv", "results.csv")) {
      Files.deleteIfExists(folder.resolve(name));
    }
    Files.deleteIfExists(folder);
  }
}
