package org.siltbench.station.window.today;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.today.Due;

/** What Today's model lists, without a screen. */
class TodayModelTest {

  @TempDir Path folder;

  @Test
  void a_new_batch_is_due_for_weighing_and_leads_to_its_screen() {
    try (TestDesk desk = new TestDesk(folder)) {
      TodayModel model = new TodayModel(desk.desk());
      desk.desk().go("today");
      model.refresh();
      assertEquals(List.of(), model.due());

      List<String> ids = desk.batch("storm", "sm-2540d-23", "sample", "sample", "control");
      assertEquals(List.of(Due.What.PRE_WEIGH), model.due().stream().map(Due::what).toList());
      assertEquals(3, model.due().get(0).count());
      assertEquals("storm", model.due().get(0).batch());

      desk.pre(ids.get(0), "0.11234");
      assertEquals(
          List.of(Due.What.PRE_WEIGH, Due.What.ISSUE),
          model.due().stream().map(Due::what).toList());

      model.open(model.due().get(0));
      assertEquals("preweigh", desk.desk().front().get());
    }
  }
}
