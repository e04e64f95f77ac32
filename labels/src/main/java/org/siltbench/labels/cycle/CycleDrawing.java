package org.siltbench.labels.cycle;

import java.io.IOException;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.draw.Cell;
import org.siltbench.labels.draw.Column;
import org.siltbench.labels.draw.Flow;
import org.siltbench.labels.draw.Ink;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Table;
import org.siltbench.labels.draw.Times;
import org.siltbench.labels.draw.Type;

/** Draws the card for the oven door, to be read from a step away. */
public final class CycleDrawing {

  private static final Type BIG = new Type(true, 19, Ink.BLACK);
  private static final Type NAME = new Type(false, 9, Ink.BLACK);
  private static final double BOX = 19;

  private CycleDrawing() {}

  public static void draw(Paper paper, CycleCard card) throws IOException {
    Flow flow = Flow.upright(paper, "Drying cycle " + card.cycle());
    flow.title("Drying cycle " + card.cycle(), card.temperature());
    flow.facts(
        3,
        "Purpose",
        card.purpose(),
        "Filters",
        Integer.toString(card.dishes().size()),
        "Loaded by",
        card.operator());
    boxes(flow, "in range again at", card.in(), "may come out from", card.earliestOut());
    boxes(flow, "cooled at", card.cooledUntil(), "weigh before", card.usefulUntil());
    byHand(flow);
    dishes(flow, card);
    cautions(flow);
    flow.finish();
  }

  private static void boxes(
      Flow flow,
      String first,
      @Nullable OffsetDateTime firstAt,
      String second,
      @Nullable OffsetDateTime secondAt)
      throws IOException {
    flow.keep(BOX + 3);
    double w = (flow.width() - 4) / 2;
    box(flow, flow.left(), w, first, firstAt);
    box(flow, flow.left() + w + 4, w, second, secondAt);
    flow.down(BOX + 3);
  }

  private static void box(Flow flow, double x, double w, String name, @Nullable OffsetDateTime at)
      throws IOException {
    flow.page().frame(x, flow.y(), w, BOX, 1.2, 0.3, Ink.BLACK);
    flow.paper().begin("P");
    flow.page().text(x + 2.5, flow.y() + 5, name, NAME);
    if (at != null) {
      flow.page().text(x + 2.5, flow.y() + 15, Times.minute(at), BIG);
    }
    flow.paper().end();
  }

  private static void byHand(Flow flow) throws IOException {
    Table table =
        Table.toWrite(
            11,
            Column.left("", 22),
            Column.left("date and time", 40),
            Column.left("thermometer reads, °C", 36),
            Column.left("thermometer no.", 34),
            Column.left("initials", 24));
    for (String moment : new String[] {"in", "back in range", "out", "to the balance"}) {
      table.row(Cell.strong(moment), Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY);
    }
    flow.heading("By hand").table(table);
  }

  private static void dishes(Flow flow, CycleCard card) throws IOException {
    Table table =
        Table.toRead(
            Column.right("dish", 12),
            Column.left("filter", 32),
            Column.left("note", 36),
            Column.left("", 4),
            Column.right("dish", 12),
            Column.left("filter", 32),
            Column.left("note", 36));
    int rows = (card.dishes().size() + 1) / 2;
    for (int i = 0; i < rows; i++) {
      CycleCard.Dish one = card.dishes().get(i);
      CycleCard.Dish two =
          i + rows < card.dishes().size()
              ? card.dishes().get(i + rows)
              : new CycleCard.Dish("", "", "");
      table.row(
          Cell.strong(one.dish()),
          Cell.of(one.filter()),
          Cell.of(one.note()),
          Cell.EMPTY,
          Cell.strong(two.dish()),
          Cell.of(two.filter()),
          Cell.of(two.note()));
    }
    flow.heading("Dishes").table(table);
  }

  private static void cautions(Flow flow) throws IOException {
    flow.heading("Take care");
    flow.item(
        "!",
        "The oven, its shelves and the dishes burn. Use tongs and heat-proof gloves; keep plastic"
            + " bags, solvents and paper out of the oven. Your laboratory's own rules come first.");
    flow.item(
        "!",
        "Do not add wet filters to a running cycle: the clock starts again for all of them. Filters"
            + " go into the desiccator hot and leave it one at a time.");
    flow.item(
        "!",
        "A desiccator under vacuum can implode. Check the glass for cracks, wear eye protection and"
            + " let the air in slowly.");
  }
}
