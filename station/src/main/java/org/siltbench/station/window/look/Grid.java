package org.siltbench.station.window.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.window.desk.Texts;

/**
 * A table whose columns share its width by weight. Its heads are the texts {@code column.KEY};
 * Enter or two clicks choose a row.
 */
public final class Grid<T> extends TableView<T> {

  private static final double BAR_PX = 28;

  private final Texts texts;
  private final List<Double> weights = new ArrayList<>();

  /**
   * A table.
   *
   * @param key its id and the text of its name for screen readers
   * @param empty what stands in it while it is empty
   */
  public Grid(Texts texts, String key, String empty, ObservableList<T> items) {
    super(items);
    this.texts = texts;
    setId(key);
    setAccessibleText(texts.get(key).replace("_", ""));
    setPlaceholder(Controls.text(texts, empty, "hint"));
    widthProperty().addListener((width, before, now) -> fit());
  }

  /** A column of words. */
  public Grid<T> column(String key, double weight, Function<T, String> words) {
    TableColumn<T, T> column = add(key, weight);
    column.setCellFactory(c -> new Cell<>(row -> Controls.cell(words.apply(row))));
    return this;
  }

  /** A column of nodes. */
  public Grid<T> nodes(String key, double weight, Function<T, Node> node) {
    add(key, weight).setCellFactory(c -> new Cell<>(node));
    return this;
  }

  private TableColumn<T, T> add(String key, double weight) {
    TableColumn<T, T> column = new TableColumn<>(texts.get("column." + key));
    column.setSortable(false);
    column.setReorderable(false);
    column.setCellValueFactory(data -> new ReadOnlyObjectWrapper<>(data.getValue()));
    weights.add(weight);
    getColumns().add(column);
    return column;
  }

  private void fit() {
    double all = weights.stream().mapToDouble(Double::doubleValue).sum();
    for (int i = 0; i < weights.size(); i++) {
      getColumns().get(i).setPrefWidth((getWidth() - BAR_PX) * weights.get(i) / all);
    }
  }

  /** Does this with the row that is chosen by Enter or two clicks. */
  public Grid<T> chosen(Consumer<T> action) {
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            selected(action);
            event.consume();
          }
        });
    setOnMouseClicked(
        event -> {
          if (event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2) {
            selected(action);
          }
        });
    return this;
  }

  /** Does this with the selected row, if there is one. */
  public void selected(Consumer<T> action) {
    T row = getSelectionModel().getSelectedItem();
    if (row != null) {
      action.accept(row);
    }
  }

  private static final class Cell<T> extends TableCell<T, T> {
    private final Function<T, Node> face;

    Cell(Function<T, Node> face) {
      this.face = face;
    }

    @Override
    protected void updateItem(@Nullable T item, boolean empty) {
      super.updateItem(item, empty);
      setGraphic(item == null || empty ? null : face.apply(item));
    }
  }
}
