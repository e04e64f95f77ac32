package org.siltbench.station.window;

import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import org.siltbench.station.window.check.CheckScreen;
import org.siltbench.station.window.connect.ConnectScreen;
import org.siltbench.station.window.drying.DryingScreen;
import org.siltbench.station.window.log.LogScreen;
import org.siltbench.station.window.postweigh.PostWeighScreen;
import org.siltbench.station.window.prepare.PrepareScreen;
import org.siltbench.station.window.preweigh.PreWeighScreen;
import org.siltbench.station.window.quality.QualityScreen;
import org.siltbench.station.window.receipt.ReceiptScreen;
import org.siltbench.station.window.results.ResultsScreen;
import org.siltbench.station.window.settings.SettingsScreen;
import org.siltbench.station.window.shell.ScreenEntry;
import org.siltbench.station.window.today.TodayScreen;

/** The screens, in the order of the rail: one line each. */
final class Screens {

  private Screens() {}

  static List<ScreenEntry> all() {
    return List.of(
        ScreenEntry.on(KeyCode.F2, "today", TodayScreen::new),
        ScreenEntry.on(KeyCode.F3, "prepare", PrepareScreen::new),
        ScreenEntry.on(KeyCode.F4, "check", CheckScreen::new),
        ScreenEntry.on(KeyCode.F5, "preweigh", PreWeighScreen::new),
        ScreenEntry.on(KeyCode.F6, "receipt", ReceiptScreen::new),
        ScreenEntry.on(KeyCode.F7, "drying", DryingScreen::new),
        ScreenEntry.on(KeyCode.F8, "postweigh", PostWeighScreen::new),
        ScreenEntry.on(KeyCode.F9, "results", ResultsScreen::new),
        ScreenEntry.on(KeyCode.F10, "log", LogScreen::new),
        ScreenEntry.on(KeyCode.F11, "quality", QualityScreen::new),
        new ScreenEntry(
            "settings",
            new KeyCodeCombination(KeyCode.COMMA, KeyCombination.SHORTCUT_DOWN),
            SettingsScreen::new),
        ScreenEntry.hidden("connect", ConnectScreen::new));
  }
}
