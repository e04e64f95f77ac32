package org.siltbench.station.window.look;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.Mnemonic;

/**
 * Letters with Alt where the toolkit gives up: it takes the first place it knows for a letter,
 * small and capital apart, even if nothing of that place is on the screen now.
 */
public final class Mnemonics {

  private Mnemonics() {}

  /** Takes what the toolkit leaves. */
  public static void listen(Scene scene) {
    scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> take(scene, event));
  }

  private static void take(Scene scene, KeyEvent event) {
    if (!event.isAltDown() || event.isControlDown() || !event.getCode().isLetterKey()) {
      return;
    }
    List<Mnemonic> here =
        scene.getMnemonics().values().stream()
            .flatMap(List::stream)
            .filter(one -> letter(one).equalsIgnoreCase(event.getCode().getName()))
            .filter(one -> isShown(one.getNode()))
            .toList();
    if (here.size() == 1) {
      here.get(0).getNode().requestFocus();
      here.get(0).fire();
      event.consume();
    }
  }

  /** The last letter of its name, as in {@code Alt+'b'}. */
  private static String letter(Mnemonic one) {
    String name = one.getKeyCombination().getName().replace("'", "");
    return name.substring(name.length() - 1);
  }

  private static boolean isShown(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible() || at.isDisabled()) {
        return false;
      }
    }
    return node.getScene() != null;
  }
}
