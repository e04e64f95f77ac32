package org.siltbench.station.work.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.mozilla.universalchardet.UniversalDetector;
import org.siltbench.station.Problem;

/**
 * A file's text and the character set it was read with.
 *
 * @param sure false where the character set is only the most likely one
 */
record Decoded(String text, Charset charset, boolean sure) {

  private static final int MOST_BYTES = 16 << 20;

  static Decoded of(Path file, Optional<String> said) throws IOException {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new Problem.WrongUse(ExchangeSays.TOO_LARGE, file);
      }
      return of(file, Files.readAllBytes(file), said);
    } catch (NoSuchFileException e) {
      throw new Problem.WrongUse(ExchangeSays.NO_FILE, file);
    }
  }

  private static Decoded of(Path file, byte[] bytes, Optional<String> said) {
    if (bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] == 3 && bytes[3] == 4) {
      throw new Problem.WrongUse(ExchangeSays.SPREADSHEET, file);
    }
    if (said.isPresent()) {
      return strict(bytes, Charset.forName(said.get()))
          .map(text -> new Decoded(text, Charset.forName(said.get()), true))
          .orElseThrow(() -> new Problem.WrongUse(ExchangeSays.CHARSET, file, said.get()));
    }
    Optional<Charset> unicode = unicode(bytes);
    if (unicode.isPresent()) {
      Optional<String> text = strict(bytes, unicode.get());
      if (text.isPresent()) {
        return new Decoded(text.get(), unicode.get(), true);
      }
    }
    Charset likely = likely(bytes);
    String text = new String(bytes, likely);
    return new Decoded(text, likely, false);
  }

  /** By its byte order mark, by the zeros between plain letters, or UTF-8. */
  private static Optional<Charset> unicode(byte[] bytes) {
    if (starts(bytes, 0xFF, 0xFE)) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    if (starts(bytes, 0xFE, 0xFF)) {
      return Optional.of(StandardCharsets.UTF_16BE);
    }
    int even = 0;
    int odd = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == 0) {
        even += i % 2 == 0 ? 1 : 0;
        odd += i % 2;
      }
    }
    if (4 * odd > bytes.length) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    return Optional.of(
        4 * even > bytes.length ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8);
  }

  private static boolean starts(byte[] bytes, int first, int second) {
    return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }

  /** What the detector takes it for, if that is a character set of one byte; else Windows-1252. */
  private static Charset likely(byte[] bytes) {
    UniversalDetector detector = new UniversalDetector();
    detector.handleData(bytes, 0, bytes.length);
    detector.dataEnd();
    String name = detector.getDetectedCharset();
    boolean western = name == null || name.startsWith("ISO-8859-1") || !Charset.isSupported(name);
    return Charset.forName(western ? "windows-1252" : name);
  }

  private static Optional<String> strict(byte[] bytes, Charset charset) {
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }
}
