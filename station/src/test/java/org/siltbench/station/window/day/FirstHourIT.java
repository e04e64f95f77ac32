package org.siltbench.station.window.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;

/**
 * The page of the first hour, read and obeyed by a robot: keys in frames are pressed, what is typed
 * goes into the field of that caption, words in bold must be seen, pictures are taken where they
 * stand.
 */
@Timeout(300)
class FirstHourIT {

  private static final Path PAGE =
      Path.of(System.getProperty("siltbench.root", ".")).resolve("docs/first-hour.md");
  private static final int FASTER = 60;

  private static final Pattern STEP =
      Pattern.compile(
          "!\\[[^\\]]*\\]\\(pictures/window/(?<picture>[a-z-]+)\\.png\\)"
              + "|[Tt]ype `(?<text>[^`]+)` into \\*(?<caption>[^*]+)\\*"
              + "|[Cc]hoose `(?<button>[^`]+)`"
              + "|`(?<key>F\\d+|Enter|Esc|(?:Alt|Ctrl)\\+.)`"
              + "|\\*\\*(?<seen>[^*]+)\\*\\*");

  private static final Map<String, KeyCode> NAMES =
      Map.of("CTRL", KeyCode.CONTROL, "ESC", KeyCode.ESCAPE);

  @TempDir Path folder;
  private RobotWindow window;

  private static String steps() throws IOException {
    String text = Files.readString(PAGE);
    return text.substring(text.indexOf("## 1."), text.indexOf("## What comes next"));
  }

  @Test
  void every_step_of_the_page_leads_where_it_says() throws IOException {
    Path lab = folder.resolve("lab");
    int obeyed = 0;
    try (RobotWindow opened = RobotWindow.openWithNobody(lab, new BenchTime(1))) {
      window = opened;
      RobotWindow.on(
          () -> {
            window.assembly().connect("practice?seed=3&speed=" + FASTER);
            window.desk().go("connect"); // as a bench without a balance opens
            return true;
          });
      window.awaitText("state", "Ready");
      Matcher step = STEP.matcher(steps());
      while (step.find()) {
        obey(step);
        obeyed++;
      }
      List<String> masses = LedgerFacts.of(window.lab(), "weighing");
      assertEquals(4, masses.size(), "the first one, two of the batch, one of them once more");
    }
    assertTrue(obeyed > 30, "steps on the page: " + obeyed);
    assertTrue(VerifyLab.of(lab, List.of()).ok());
  }

  private void obey(Matcher step) {
    if (step.group("picture") != null) {
      window.shot(step.group("picture"));
    } else if (step.group("text") != null) {
      window.type(fieldOf(step.group("caption")), step.group("text"));
    } else if (step.group("button") != null) {
      window.press(buttonOf(step.group("button")), KeyCode.SPACE);
    } else if (step.group("key") != null) {
      window.robot().push(keys(step.group("key")));
    } else {
      see(step.group("seen"));
    }
  }

  private static KeyCode[] keys(String name) {
    String[] parts = name.split("\\+");
    KeyCode[] keys = new KeyCode[parts.length];
    for (int i = 0; i < parts.length; i++) {
      String one = parts[i].toUpperCase(Locale.ROOT);
      keys[i] = NAMES.containsKey(one) ? NAMES.get(one) : KeyCode.valueOf(one);
    }
    return keys;
  }

  private void see(String words) {
    try {
      RobotWindow.await("“" + words + "” on the screen", () -> find(words).isPresent());
    } catch (AssertionError e) {
      window.shot("failed-first-hour");
      throw e;
    }
  }

  private Optional<Node> find(String words) {
    return window.scene().getRoot().lookupAll("*").stream()
        .filter(node -> node instanceof Labeled labeled && said(labeled).contains(words))
        .filter(FirstHourIT::shown)
        .findFirst();
  }

  private static String said(Labeled labeled) {
    return labeled.getText() == null ? "" : MarkedWords.plain(labeled.getText()).replace("_", "");
  }

  private static boolean shown(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private String fieldOf(String caption) {
    see(caption);
    return RobotWindow.on(
        () ->
            window.scene().getRoot().lookupAll("*").stream()
                .filter(node -> node instanceof Label label && said(label).equals(caption))
                .filter(FirstHourIT::shown)
                .map(node -> ((Label) node).getLabelFor())
                .filter(field -> field != null)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field " + caption))
                .getId());
  }

  private String buttonOf(String words) {
    see(words);
    return RobotWindow.on(() -> find(words).filter(Button.class::isInstance).orElseThrow().getId());
  }
}
