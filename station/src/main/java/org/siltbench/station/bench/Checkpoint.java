package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.OwnerOnly;
import org.siltbench.station.said.Said;

/**
 * A copy of the register file, made by its owner while the file is at rest. Other processes work on
 * copies of that copy and fold the tail of the ledgers onto it. A checkpoint is only a short cut:
 * whatever is wrong with it, the register is made from the ledgers.
 */
final class Checkpoint {

  private static final String SUFFIX = ".mv.db";
  private static final String BESIDE = "beside-";
  private static final long WORTHWHILE = 2000;

  private final Path folder;
  private final Setting setting;
  private @Nullable Path copy;

  Checkpoint(Path folder, Setting setting) {
    this.folder = folder;
    this.setting = setting;
  }

  /** Called by the owner when its register is closed. */
  void keep(long entries) {
    try {
      if (entries - kept() >= WORTHWHILE) {
        Path fresh = folder.resolve("checkpoint.new");
        Files.deleteIfExists(fresh);
        Files.copy(folder.resolve("register" + SUFFIX), fresh);
        Files.move(
            fresh,
            folder.resolve("checkpoint" + SUFFIX),
            StandardCopyOption.ATOMIC_MOVE,
            StandardCopyOption.REPLACE_EXISTING);
        setting
            .disk()
            .replace(
                folder.resolve("checkpoint.count"),
                Long.toString(entries).getBytes(StandardCharsets.US_ASCII));
      }
    } catch (IOException e) {
      setting.notes().accept(Said.of(BenchSays.NOTE_NO_CHECKPOINT, Elsewhere.words(e)));
    }
  }

  private long kept() throws IOException {
    Path count = folder.resolve("checkpoint.count");
    try {
      return Files.exists(count) ? Long.parseLong(Files.readString(count).strip()) : 0;
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  /** A private copy to work on, as the name of a register; empty if there is no checkpoint. */
  Optional<Path> copy() throws IOException {
    Path checkpoint = folder.resolve("checkpoint" + SUFFIX);
    if (!Files.exists(checkpoint)) {
      return Optional.empty();
    }
    String name = BESIDE + UUID.randomUUID();
    Path file = folder.resolve(name + SUFFIX);
    copy = file;
    Files.copy(checkpoint, file);
    OwnerOnly.close(file);
    return Optional.of(folder.resolve(name));
  }

  /** Takes the private copy away. */
  void drop() {
    Path file = copy;
    copy = null;
    if (file != null) {
      remove(file);
    }
  }

  /** Takes away what killed processes left; a running one keeps its open file on POSIX systems. */
  void sweep() {
    try {
      for (String name : setting.disk().names(folder)) {
        if (name.startsWith(BESIDE) && OwnerOnly.isPosix(folder)) {
          remove(folder.resolve(name));
        }
      }
    } catch (IOException e) {
      setting.notes().accept(Said.of(BenchSays.NOTE_REGISTER_FOLDER, Elsewhere.words(e)));
    }
  }

  private void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      setting.notes().accept(Said.of(BenchSays.NOTE_COPY_LEFT, file.getFileName()));
    }
  }
}
