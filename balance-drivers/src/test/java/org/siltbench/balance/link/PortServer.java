package org.siltbench.balance.link;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * A small RFC 2217 port server for tests, written from the RFC and sharing no code with what it
 * tests: a byte-by-byte reading of IAC sequences.
 */
final class PortServer implements AutoCloseable {

  private final ServerSocket server;
  private final ExecutorService serving = Executors.newSingleThreadExecutor();
  private final ByteArrayOutputStream heard = new ByteArrayOutputStream();
  private final ByteArrayOutputStream data = new ByteArrayOutputStream();
  private final long[] settings = new long[4];
  private String greeting = "";
  private boolean refusing;
  private boolean silent;
  private long baudAnswer = -1;
  private volatile OutputStream out;

  PortServer() throws IOException {
    server = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"));
    serving.submit(this::serve);
  }

  int port() {
    return server.getLocalPort();
  }

  void greetWith(String text) {
    greeting = text;
  }

  void refuse() {
    refusing = true;
  }

  void staySilent() {
    silent = true;
  }

  void answerBaudWith(long baud) {
    baudAnswer = baud;
  }

  synchronized String heardHex() {
    return HexFormat.of().formatHex(heard.toByteArray());
  }

  synchronized String settings() {
    return Arrays.toString(settings);
  }

  void sendRaw(byte[] bytes) throws IOException {
    out.write(bytes);
  }

  synchronized byte[] awaitData(int count) throws InterruptedException {
    while (data.size() < count) {
      wait();
    }
    return data.toByteArray();
  }

  private Void serve() throws IOException {
    try (Socket socket = server.accept()) {
      InputStream in = socket.getInputStream();
      out = socket.getOutputStream();
      out.write(greeting.getBytes(ISO_8859_1));
      for (int b = next(in); b >= 0; b = next(in)) {
        if (b != 255) {
          keep(b);
        } else {
          command(in, next(in));
        }
      }
    }
    return null;
  }

  private synchronized void keep(int b) {
    data.write(b);
    notifyAll();
  }

  private int next(InputStream in) throws IOException {
    int b = in.read();
    if (b >= 0) {
      synchronized (this) {
        heard.write(b);
      }
    }
    return b;
  }

  private void command(InputStream in, int code) throws IOException {
    if (code == 255) {
      keep(255);
    } else if (code == 250) {
      sub(in);
    } else if (code >= 251) {
      int option = next(in);
      if (option == 44 && code == 251 && !silent) {
        out.write(new byte[] {(byte) 255, (byte) (refusing ? 254 : 253), 44}); // DONT or DO
      }
    }
  }

  private void sub(InputStream in) throws IOException {
    List<Integer> content = new ArrayList<>();
    while (true) {
      int b = next(in);
      if (b == 255) {
        int after = next(in);
        if (after == 240) {
          break;
        }
        b = after;
      }
      content.add(b);
    }
    set(content);
  }

  private void set(List<Integer> content) throws IOException {
    int what = content.get(1);
    long value = 0;
    for (int b : content.subList(2, content.size())) {
      value = value * 256 + b;
    }
    synchronized (this) {
      settings[what - 1] = value;
    }
    if (!silent && !refusing) {
      confirm(what, content.size() - 2, what == 1 && baudAnswer > 0 ? baudAnswer : value);
    }
  }

  private void confirm(int what, int width, long value) throws IOException {
    ByteArrayOutputStream answer = new ByteArrayOutputStream();
    answer.writeBytes(new byte[] {(byte) 255, (byte) 250, 44, (byte) (what + 100)});
    for (int i = width - 1; i >= 0; i--) {
      int b = (int) (value >> (8 * i)) & 255;
      answer.write(b);
      if (b == 255) {
        answer.write(b);
      }
    }
    answer.writeBytes(new byte[] {(byte) 255, (byte) 240});
    out.write(answer.toByteArray());
  }

  @Override
  public void close() throws IOException {
    server.close();
    serving.shutdownNow();
  }
}
