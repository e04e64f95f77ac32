package org.siltbench.station.window.look;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** A form that is taller than its place: what gets the focus comes into sight. */
public final class FocusScroll extends ScrollPane {

  /** Scrolls this content up and down. */
  public FocusScroll(Region content) {
    super(content);
    setFitToWidth(true);
    setFocusTraversable(false);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    sceneProperty()
        .subscribe(
            scene -> {
              if (scene != null) {
                scene.focusOwnerProperty().subscribe(this::bring);
              }
            });
  }

  private void bring(@org.jspecify.annotations.Nullable Node focus) {
    if (focus == null || !isInside(focus)) {
      return;
    }
    Bounds at = getContent().sceneToLocal(focus.localToScene(focus.getLayoutBounds()));
    double height = getContent().getLayoutBounds().getHeight();
    double room = getViewportBounds().getHeight();
    if (height <= room) {
      return;
    }
    double top = getVvalue() * (height - room);
    if (at.getMinY() < top) {
      setVvalue(at.getMinY() / (height - room));
    } else if (at.getMaxY() > top + room) {
      setVvalue((at.getMaxY() - room) / (height - room));
    }
  }

  private boolean isInside(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at == getContent()) {
        return true;
      }
    }
    return false;
  }
}
