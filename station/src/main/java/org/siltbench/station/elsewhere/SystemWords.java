package org.siltbench.station.elsewhere;

import java.net.ConnectException;
import java.net.SocketTimeoutException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** Tells the commonest complaints of the system; in English they stay as they came. */
final class SystemWords {

  private SystemWords() {}

  static Optional<Words> of(Throwable e) {
    SystemSays code = code(e);
    if (code == null) {
      return Optional.empty();
    }
    String english = String.valueOf(e.getMessage());
    Said said = Said.of(code, e instanceof FileSystemException at ? at.getFile() : "");
    return Optional.of(
        language ->
            language.equals(Locale.ENGLISH) || language.equals(Words.SCREEN_ENGLISH)
                ? english
                : said.in(language));
  }

  private static @Nullable SystemSays code(Throwable e) {
    String text = String.valueOf(e.getMessage());
    if (text.endsWith("No space left on device")) {
      return SystemSays.DISK_FULL;
    } else if (e instanceof FileSystemException at) {
      return ofFile(at, text);
    } else if (e instanceof CharacterCodingException) {
      return SystemSays.NOT_TEXT;
    } else if (e instanceof ConnectException) {
      return SystemSays.NO_CONNECTION;
    }
    return e instanceof SocketTimeoutException ? SystemSays.TIMED_OUT : null;
  }

  private static @Nullable SystemSays ofFile(FileSystemException e, String text) {
    if (e instanceof NoSuchFileException) {
      return SystemSays.NO_FILE;
    } else if (e instanceof AccessDeniedException || text.endsWith("Permission denied")) {
      return SystemSays.NO_PERMISSION;
    } else if (e instanceof FileAlreadyExistsException) {
      return SystemSays.FILE_EXISTS;
    }
    boolean noFolder = e instanceof NotDirectoryException || text.endsWith("Not a directory");
    return noFolder ? SystemSays.NO_FOLDER : null;
  }
}
