package org.siltbench.station.window.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.LabelPrinter;
import org.siltbench.station.Problem;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.exchange.OwnFiles;
import org.siltbench.station.work.label.RulerTest;
import org.siltbench.station.work.method.OwnMethod;
import org.siltbench.station.work.paper.PaperFolder;
import org.siltbench.station.work.weigh.Scale;

/** Everything that can be set, and the lists it is chosen from. */
final class SettingsModel {

  /** A method in the list. */
  record Known(String key, String title, String standard, String text) {}

  /** Keys that nothing else of the window uses, as a pedal may send them. */
  static final List<String> KEYS = List.of("F12", "Insert", "Pause");

  private static final String ABOUT = "settings";

  private final Desk desk;
  private final Texts texts;
  private final ObservableList<String> formats = FXCollections.observableArrayList();
  private final ObservableList<String> media = FXCollections.observableArrayList();
  private final ObservableList<String> printers = FXCollections.observableArrayList();
  private final ObservableList<Known> methods = FXCollections.observableArrayList();
  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper formatText = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper lengths = new ReadOnlyStringWrapper("");

  SettingsModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(SettingsModel.class);
  }

  ObservableList<String> formats() {
    return formats;
  }

  ObservableList<String> media() {
    return media;
  }

  ObservableList<String> printers() {
    return printers;
  }

  ObservableList<Known> methods() {
    return methods;
  }

  ObservableList<Person> people() {
    return people;
  }

  /** The format chosen, as its file says it. */
  ReadOnlyStringProperty formatText() {
    return formatText.getReadOnlyProperty();
  }

  /** What the ruler should measure, and where the page is. */
  ReadOnlyStringProperty lengths() {
    return lengths.getReadOnlyProperty();
  }

  String like(Prefs.Name name) {
    return desk.prefs().get(name);
  }

  void like(Prefs.Name name, String word) {
    desk.like(name, word);
  }

  private Path folder(String name) {
    return desk.lab().folder().resolve(name);
  }

  private record Looked(
      List<String> formats, List<String> media, List<Known> methods, List<Person> people) {}

  /** Looks again what there is; printers are asked apart, since a print system may be slow. */
  void refresh() {
    desk.work()
        .run(
            () -> new Looked(files("formats", ""), stocks(), known(), desk.signOn().everybody()),
            now -> {
              formats.setAll(now.formats());
              media.setAll(now.media());
              methods.setAll(now.methods());
              people.setAll(now.people());
            });
    desk.printing().run(LabelPrinter::queues, printers::setAll);
  }

  private List<String> files(String name, String before) {
    Path folder = folder(name);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> before + file.getFileName()).sorted().toList();
    } catch (IOException e) {
      throw new Problem.Outside(e, SettingsSays.FOLDER_UNREADABLE, folder);
    }
  }

  private List<String> stocks() {
    Stream<String> own = files("media", folder("media") + "/").stream();
    return Stream.concat(MediaCatalog.builtIn().stream().map(Media::name), own).toList();
  }

  private List<Known> known() {
    return desk.methods().all().stream()
        .map(m -> new Known(m.key(), m.title(), m.standard() + ", " + m.edition(), m.text()))
        .toList();
  }

  /** Listens to this balance from now on. */
  void useBalance(String spec) {
    act(
        () -> {
          Scale.parse(spec.strip());
          return spec.strip();
        },
        good -> {
          desk.connect(good);
          tell(texts.get("using", good));
        });
  }

  /** Shows a saved format. */
  void showFormat(String file) {
    act(
        () -> {
          try {
            return Files.readString(folder("formats").resolve(file));
          } catch (IOException e) {
            throw new Problem.Outside(e, SettingsSays.FORMAT_UNREADABLE, file);
          }
        },
        formatText::set);
  }

  /** Takes a saved format for the balance in use. */
  void useFormat(String file, String spec) {
    act(
        () -> {
          String name = file.replaceFirst("\\.[^.]*$", "");
          var link = Scale.parse(spec.strip());
          return link.with(link.options().withFormat(name)).toString();
        },
        this::useBalance);
  }

  /** Draws the page with the rulers for the stock that is set. */
  void drawRuler() {
    String stock = like(Prefs.Name.MEDIA);
    act(
        () -> {
          RulerTest test = RulerTest.of(stock);
          Path page = PaperFolder.place(desk.lab(), "ruler-" + test.stock().name() + ".pdf");
          test.draw(page, dpi(), desk.clock());
          List<String> mm = test.expected();
          Path seen = desk.lab().folder().relativize(page);
          return texts.get("ruler.drawn", seen, mm.get(0), mm.get(1), mm.get(2), mm.get(3));
        },
        lengths::set);
  }

  private int dpi() {
    return Typed.whole(texts.get("dpi"), like(Prefs.Name.DPI), 300, 100, 2400);
  }

  /** Makes the stock true with what was measured, and uses it from now on. */
  void makeTrue(List<String> measured) {
    String stock = like(Prefs.Name.MEDIA);
    act(
        () -> {
          RulerTest test = RulerTest.of(stock);
          Media good =
              test.madeTrue(
                  measured.stream()
                      .map(mm -> Typed.required(texts.get("measured"), mm).doubleValue())
                      .toList());
          Path file = folder("media").resolve(test.stock().name() + ".media");
          makeFolder(file);
          RulerTest.save(good, file);
          return file.toString();
        },
        file -> {
          like(Prefs.Name.MEDIA, file);
          tell(texts.get("made.true", file));
          refresh();
        });
  }

  private static void makeFolder(Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
    } catch (IOException e) {
      throw new Problem.Outside(e, SettingsSays.FOLDER_NOT_MADE, file);
    }
  }

  /** Keeps numbers as an own method. */
  void saveMethod(String key, String text) {
    act(
        () -> OwnMethod.save(desk.lab().folder(), desk.methods(), key, text),
        file -> {
          tell(texts.get("method.saved", file));
          refresh();
        });
  }

  /** Registers a person. */
  void register(String initials, Right right, char[] pin, char[] again, String badge) {
    if (!java.util.Arrays.equals(pin, again)) {
      desk.notices().show(ABOUT, new Problem.WrongUse(SettingsSays.PINS_DIFFER));
      return;
    }
    act(
        () -> {
          desk.signOn().register(initials, right, pin, badge);
          return initials;
        },
        who -> {
          tell(texts.get("registered", who));
          refresh();
        });
  }

  /** Takes a person off the list. */
  void remove(Person person) {
    act(
        () -> {
          desk.signOn().remove(person.initials());
          return person.initials();
        },
        who -> {
          tell(texts.get("removed", who));
          refresh();
        });
  }

  /** Where balances are found. */
  void find() {
    desk.go("connect");
  }

  private <T> void act(Supplier<T> job, java.util.function.Consumer<T> then) {
    desk.work()
        .run(
            job,
            done -> {
              desk.notices().clear(ABOUT);
              then.accept(done);
            },
            problem -> desk.notices().show(ABOUT, problem));
  }

  private void tell(String said) {
    desk.notices().show(Notice.note(ABOUT, said));
  }

  /** Opens the window again, so that its language is the one chosen. */
  void openAgain() {
    desk.notices().clear(ABOUT);
    try {
      desk.openAgain();
    } catch (Problem.Refused e) {
      desk.notices().show(ABOUT, e);
    }
  }

  /** Takes a line format, a method or a label stock in from elsewhere. */
  void takeFile(String file) {
    act(
        () -> {
          desk.signOn().requireWeigher();
          return new OwnFiles(desk.lab().folder()).take(Path.of(file.strip()));
        },
        kept -> {
          refresh();
          tell(texts.get("own.taken", kept.getFileName()));
        });
  }

  /** Writes one out as it stands: into the folder named, else among the papers of the lab. */
  void giveFile(String name, String folder) {
    act(
        () -> {
          Path to = Path.of(folder.strip());
          boolean named = !folder.isBlank() && Files.isDirectory(to);
          return new OwnFiles(desk.lab().folder())
              .give(name, named ? to : desk.lab().folder().resolve("papers"));
        },
        given -> tell(texts.get("own.given", given)));
  }
}
