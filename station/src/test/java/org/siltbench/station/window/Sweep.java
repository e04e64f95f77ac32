package org.siltbench.station.window;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.text.Text;
import org.siltbench.calc.flag.Flag;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.life.Role;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;

/**
 * Looks over everything a window says for English that a German would see: texts of nodes, what is
 * read to who cannot see them, tooltips, prompts, messages. What people typed or recorded is known
 * from the fields and the ledger, and taken out first.
 */
final class Sweep {

  /** Words of English that are no German; a German text has none of them. */
  static final Pattern ENGLISH =
      Pattern.compile(
          "(?<![\\p{L}\\d.@/_-])(the|and|of|is|not|with|from|this|that|are|were|has|have|its|it|been|"
              + "be|by|or|if|when|which|there|to|for|no|as|at|than|then|only|into|nothing|cannot|"
              + "could|must|may|should|between|without|before|after|above|below|within|outside|"
              + "filters|sample|samples|weighed|weighing|weighings|reading|readings|balance|scale|"
              + "oven|dish|dried|drying|volume|blank|duplicate|mass|masses|residue|batch|lot|bag|"
              + "pre-weighed|post-weighed|planned|issued|received|constant|reported|rejected|"
              + "passed|failed|released|opening|closing|bracket|allowed|limit|loop|discharge)"
              + "(?![\\p{L}@/_=-]|\\.\\p{L})");

  /** Two words in a row: no figure, unit or name of a thing is written so. */
  private static final Pattern PROSE =
      Pattern.compile("(?<![\\p{L}\\d/._-])\\p{Ll}{2,} \\p{Ll}{2,}");

  /** The first line of a format's file, which is the same in every language. */
  private static final String FILE = "siltbench line format";

  /** Words that stand in files, the same in every language; a screen has names for them. */
  private static final Set<String> OF_FILES = ofFiles();

  private final Desk desk;
  private final OpenLab lab;
  private final Set<String> found = new TreeSet<>();
  private final Set<String> typed = new LinkedHashSet<>();
  private int looks;

  Sweep(Desk desk, OpenLab lab) {
    this.desk = desk;
    this.lab = lab;
  }

  private static Set<String> ofFiles() {
    Set<String> words = new LinkedHashSet<>();
    for (Flag flag : Flag.values()) {
      words.add(flag.word());
    }
    for (Role role : Role.values()) {
      words.add(role.code());
    }
    words.remove(Flag.PRACTICE.word()); // the practice balance is named so, in every language
    return words;
  }

  /** In a cell of a table such a word stands alone, or beside others with commas between. */
  private static boolean isOfFiles(String text) {
    return Pattern.compile("[\n,;]")
        .splitAsStream(text)
        .map(String::strip)
        .anyMatch(OF_FILES::contains);
  }

  /** What was found so far: where, and what it says. */
  Set<String> found() {
    return found;
  }

  /** How many texts were looked at. */
  int looks() {
    return looks;
  }

  /** Looks over the whole window; on the screen's thread. */
  void over(Node root) {
    Set<String> own = own(root);
    for (Node node : root.lookupAll("*")) {
      if (seen(node)) {
        texts(node)
            .forEach(text -> judge(node.getClass().getSimpleName(), node.getId(), text, own));
      }
    }
    for (Notice notice : desk.notices().list()) {
      for (String text : List.of(notice.what(), notice.safe(), notice.next())) {
        judge("notice", notice.about(), text, own);
      }
    }
  }

  /** A text of the test's own, as a message it gives or a value that is shown as it is recorded. */
  void own(String text) {
    typed.add(text);
  }

  /** Not what stands in the ledger and is shown as it stands there. */
  private static boolean seen(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible() || at.getStyleClass().contains("as-recorded")) {
        return false;
      }
    }
    return true;
  }

  private static List<String> texts(Node node) {
    List<String> out = new ArrayList<>();
    add(out, node.getAccessibleText());
    add(out, node.getAccessibleHelp());
    if (node instanceof Labeled labeled) {
      add(out, labeled.getText());
    } else if (node instanceof Text text && !isPart(node)) {
      add(out, text.getText());
    } else if (node instanceof TextArea area && !area.isEditable()) {
      area.getText().lines().takeWhile(line -> !line.startsWith(FILE)).forEach(out::add);
    } else if (node instanceof TextInputControl field) {
      add(out, field.getPromptText());
    }
    if (node instanceof Control control && control.getTooltip() != null) {
      add(out, control.getTooltip().getText());
    }
    if (node.getProperties().get("javafx.scene.control.Tooltip") instanceof Tooltip tip) {
      add(out, tip.getText());
    }
    return out;
  }

  private static void add(List<String> out, String text) {
    if (text != null && !text.isBlank()) {
      out.add(text);
    }
  }

  /** The text of a label is looked at there, whole; that of a field is the person's. */
  private static boolean isPart(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at instanceof TextInputControl || at instanceof Labeled) {
        return true;
      }
    }
    return false;
  }

  private void judge(String kind, String id, String text, Set<String> own) {
    looks++;
    boolean marked = desk.locale().equals(MarkedWords.LANGUAGE);
    if (!marked && !desk.locale().equals(Locale.GERMAN)) {
      return;
    }
    String rest = marked ? MarkedWords.unmarked(text) : text;
    for (String known : own) {
      rest = rest.replace(known, "\n");
    }
    Matcher english = ENGLISH.matcher(rest);
    Matcher prose = PROSE.matcher(rest);
    if (english.find() || isOfFiles(rest) || (marked && prose.find())) {
      found.add(kind + ' ' + id + ": " + MarkedWords.plain(text));
    }
  }

  /** What people typed, recorded or named, the longest first. */
  private Set<String> own(Node root) {
    for (Node node : root.lookupAll("*")) {
      if (node instanceof TextInputControl field && field.isEditable() && field.getText() != null) {
        typed.add(field.getText());
      }
    }
    Set<String> all = new LinkedHashSet<>(typed);
    all.add(lab.folder().toString());
    desk.methods()
        .all()
        .forEach(one -> all.addAll(List.of(one.title(), one.standard(), one.edition())));
    lab.register().each(entry -> strings(entry.data().values(), all));
    List<String> sorted = new ArrayList<>(all);
    sorted.removeIf(one -> one.length() < 2);
    sorted.sort(Comparator.comparing(String::length).reversed());
    return new LinkedHashSet<>(sorted);
  }

  private static void strings(Collection<?> values, Set<String> out) {
    for (Object value : values) {
      if (value instanceof String text && text.contains(" ")) {
        out.add(text);
      } else if (value instanceof Collection<?> more) {
        strings(more, out);
      } else if (value instanceof Map<?, ?> map) {
        strings(map.values(), out);
      }
    }
  }
}
