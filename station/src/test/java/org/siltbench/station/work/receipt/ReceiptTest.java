package org.siltbench.station.work.receipt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Role;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.TestLab;

class ReceiptTest {

  @TempDir Path folder;
  private TestLab lab;
  private List<String> ids;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 5);
    ids = lab.batch("sm-2540d-22", "sample", "sample", "sample", "spare", "trip-blank");
    for (String id : ids) {
      lab.pre(id, "0.11234");
    }
    lab.write("batch.issued", "batch", lab.state(ids.get(0)).batch(), "trip", "T1", "filters", ids);
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private Reconciliation.Done take(String text, Receipt.Options options) throws IOException {
    Path file = Files.writeString(folder.resolve("r.csv"), text);
    ReceiptTable table = new ReceiptReader(lab.clock()).read(file);
    return new Receipt(lab.bench()).take(table, options);
  }

  private Reconciliation.Done take(String text) throws IOException {
    return take(text, new Receipt.Options(Optional.empty(), false, false));
  }

  private SampleRecord record(int i) {
    return lab.state(ids.get(i)).record().orElseThrow();
  }

  @Test
  void a_table_is_taken_in_and_the_field_decides_the_roles() throws IOException {
    Reconciliation.Done done =
        take(
            "filter,sample,role,site,collected,portions_ml,left_ml,taken\n"
                + ids.get(0)
                + ",S1,,upper,2026-05-14T07:15,250+250,20.5,aliquot\n"
                + ids.get(3)
                + ",S2,,upper,2026-05-14 07:30+00:00,,,\n"
                + ids.get(2)
                + ",S3,field-blank,upper,,,,\n");
    assertEquals(3, done.written().size());
    assertEquals(479.5, record(0).volume().orElseThrow().millilitres());
    assertEquals(Status.RECEIVED, lab.state(ids.get(0)).status());
    assertEquals(Role.SAMPLE, lab.state(ids.get(3)).role());
    assertEquals(Role.FIELD_BLANK, lab.state(ids.get(2)).role());
    assertEquals("2026-05-14T07:15Z", record(0).text("collected"));
    assertTrue(
        done.found().warnings().stream().anyMatch(w -> w.what().english().contains("residue only")),
        done.found().warnings().toString());
    assertEquals(List.of(ids.get(1), ids.get(4)), done.found().missing());
  }

  @Test
  void a_line_with_nothing_written_beside_the_id_is_an_unused_filter() throws IOException {
    Reconciliation.Done done =
        take("filter,role,volume_ml\n" + ids.get(0) + ",sample,\n" + ids.get(4) + ",trip-blank,\n");
    assertEquals(List.of(ids.get(0)), done.found().unused());
    assertEquals(Status.RECEIVED, lab.state(ids.get(4)).status());
  }

  @Test
  void a_line_of_the_printed_field_sheet_without_handwriting_is_an_unused_filter()
      throws IOException {
    Reconciliation.Done done =
        take("filter,role,filter_order,taken,volume_ml\n" + ids.get(0) + ",sample,1,aliquot,\n");
    assertEquals(List.of(ids.get(0)), done.found().unused());
    assertEquals(List.of(), done.written());
    assertEquals(Status.ISSUED, lab.state(ids.get(0)).status());
  }

  @Test
  void scanned_bags_and_notes_are_held_against_each_other() throws IOException {
    String text = "filter,volume_ml\n" + ids.get(0) + ",250\n" + ids.get(1) + ",250\n";
    Receipt.Options scanned =
        new Receipt.Options(Optional.of(Set.of(ids.get(0), ids.get(2))), true, true);
    Reconciliation.Done done = take(text, scanned);
    assertEquals(List.of(ids.get(2)), done.found().bagsWithoutNotes());
    assertEquals(Reconciliation.Kind.NOTES_WITHOUT_BAG, done.found().refused().get(0).kind());
    assertEquals(Status.ISSUED, lab.state(ids.get(1)).status());
    assertTrue(lab.state(ids.get(3)).missing());
  }

  @Test
  void two_notes_for_one_bag_or_an_unknown_bag_record_nothing() throws IOException {
    String twice = ids.get(0) + ",250\n" + ids.get(0) + ",260\n" + ids.get(1) + ",250\n";
    Reconciliation.Done done = take("filter,volume_ml\n" + twice);
    assertEquals(List.of(), done.written());
    assertEquals(2, done.found().refused().size());
    assertEquals(Status.ISSUED, lab.state(ids.get(1)).status());
    String foreign = new org.siltbench.calc.id.BatchCode("K3DF07").filters(1).get(0).text();
    Reconciliation.Done unknown = take("filter,volume_ml\n" + foreign + ",250\n");
    assertEquals(Reconciliation.Kind.UNKNOWN, unknown.found().refused().get(0).kind());
  }

  @Test
  void the_same_table_again_changes_nothing_and_a_changed_line_is_refused() throws IOException {
    String text = "filter,volume_ml\n" + ids.get(0) + ",250\n";
    take(text);
    Reconciliation.Done again = take(text);
    assertEquals(List.of(ids.get(0)), again.found().already());
    assertEquals(List.of(), again.written());
    Reconciliation.Done other = take("filter,volume_ml\n" + ids.get(0) + ",260\n");
    assertEquals(Reconciliation.Kind.STATUS, other.found().refused().get(0).kind());
    assertEquals(250, record(0).volume().orElseThrow().millilitres());
  }

  @Test
  void a_full_code_with_another_mass_is_refused_and_with_the_right_one_taken() throws IOException {
    FilterId id = new FilterId(ids.get(0));
    String wrong = new BagCode(id, "0.11243", 1).text();
    Reconciliation.Done no = take("filter,volume_ml\n" + wrong + ",250\n");
    assertEquals(Reconciliation.Kind.BAG_MASS, no.found().refused().get(0).kind());
    String right = new BagCode(id, "0.11234", 1).text();
    assertEquals(1, take("filter,volume_ml\n" + right + ",250\n").written().size());
  }

  @Test
  void a_range_becomes_its_middle_with_the_uncertainty_of_a_rectangle() throws IOException {
    take("filter,volume_ml\n" + ids.get(0) + ",180-200\n");
    assertEquals(190, record(0).volume().orElseThrow().millilitres());
    // GUM 4.3.7 (JCGM 100:2008): half width / sqrt 3 = 10 / 1.7320508
    assertEquals(5.77350, record(0).fields().number("volume_u_ml", 0), 1e-5);
  }

  @Test
  void conditions_have_their_consequence() throws IOException {
    Reconciliation.Done done =
        take(
            "filter,volume_ml,condition\n"
                + ids.get(0)
                + ",250,torn-loss+debris-removed\n"
                + ids.get(1)
                + ",250,ok\n");
    FilterState held = lab.state(ids.get(0));
    assertEquals(1, held.holds().size());
    assertEquals(List.of(), lab.state(ids.get(1)).holds());
    assertEquals("torn-loss+debris-removed", held.record().orElseThrow().text("condition"));
    assertEquals(3, done.written().size());
  }

  @Test
  void one_sample_over_two_filters_keeps_their_order() throws IOException {
    Reconciliation.Done done =
        take(
            "filter,sample,filter_order,site,portions_ml,left_ml,left_to\n"
                + ids.get(1)
                + ",S1,2,upper,120,,\n"
                + ids.get(0)
                + ",S1,1,upper,250,120,next\n");
    assertEquals(List.of(), done.found().warnings());
    var state =
        org.siltbench.station.life.SampleState.fold(
                "S1", lab.bench().register().history(org.siltbench.station.life.About.sample("S1")))
            .orElseThrow();
    assertEquals(ids.get(0), state.records().get(0).filter());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "volume_ml|500 L|without a unit",
        "volume_ml|0|above zero",
        "volume_ml|-5|above zero",
        "volume_ml|0.5|litres",
        "volume_ml|50000|at most 10000",
        "volume_ml|200-180|smaller to the larger",
        "volume_ml|lots|a volume",
        "portions_ml|250+x|joined by +",
        "left_ml|20|without portions_ml",
        "collected|yesterday|a time",
        "collected|2027-01-01T00:00|past",
        "role|dog|a role",
        "condition|wet|one of these",
        "filter_order|1.5|whole number",
        "water_c|95|from -5 to 60",
        "pair_kind|field-replicate|no pair",
        "taken|half|one of",
      })
  void a_cell_that_makes_no_sense_ends_it_with_line_and_column(
      String column, String value, String expected) {
    Problem.WrongUse no =
        assertThrows(
            Problem.WrongUse.class,
            () -> take("filter," + column + "\n" + ids.get(0) + "," + value + "\n"));
    assertTrue(no.what().contains("line 2") && no.what().contains(expected), no.what());
    assertEquals(2, no.exitStatus());
    assertEquals(Status.ISSUED, lab.state(ids.get(0)).status());
  }

  @Test
  void portions_and_volume_together_are_refused() {
    Problem.WrongUse no =
        assertThrows(
            Problem.WrongUse.class,
            () -> take("filter,portions_ml,volume_ml\n" + ids.get(0) + ",250,250\n"));
    assertTrue(no.what().contains("both"), no.what());
  }

  @Test
  void times_out_of_order_are_refused() {
    assertThrows(
        Problem.WrongUse.class,
        () ->
            take(
                "filter,collected,filtered_from\n"
                    + ids.get(0)
                    + ",2026-05-14T07:30,2026-05-14T07:15\n"));
  }
}
