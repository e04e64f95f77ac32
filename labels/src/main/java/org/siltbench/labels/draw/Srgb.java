package org.siltbench.labels.draw;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A small ICC version 2 display profile for sRGB (IEC 61966-2-1), written here so that the bytes do
 * not hang on the Java runtime. Primaries are adapted to D50 (Bradford).
 */
final class Srgb {

  private static final int HEADER = 128;
  private static final int CURVE_POINTS = 1024;
  private static final int D50_X = s15(0.9642);
  private static final int D50_Y = s15(1);
  private static final int D50_Z = s15(0.8249);

  private Srgb() {}

  static byte[] profile() {
    byte[] curve = curve();
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", description("sRGB IEC61966-2.1"));
    tags.put("cprt", text("No copyright, use freely"));
    tags.put("wtpt", xyz(0.9642, 1, 0.8249));
    tags.put("rXYZ", xyz(0.4360747, 0.2225045, 0.0139322));
    tags.put("gXYZ", xyz(0.3850649, 0.7168786, 0.0971045));
    tags.put("bXYZ", xyz(0.1430804, 0.0606169, 0.7141733));
    tags.put("rTRC", curve);
    tags.put("gTRC", curve);
    tags.put("bTRC", curve);
    return assemble(tags);
  }

  private static byte[] assemble(Map<String, byte[]> tags) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    ByteBuffer table = ByteBuffer.allocate(4 + 12 * tags.size()).putInt(tags.size());
    byte[] last = {};
    int lastAt = 0;
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      byte[] data = tag.getValue();
      if (last != data) {
        lastAt = HEADER + table.capacity() + body.size();
        body.writeBytes(data);
        body.writeBytes(new byte[(4 - body.size() % 4) % 4]);
        last = data;
      }
      table.put(ascii(tag.getKey())).putInt(lastAt).putInt(data.length);
    }
    int size = HEADER + table.capacity() + body.size();
    return ByteBuffer.allocate(size)
        .put(header(size))
        .put(table.array())
        .put(body.toByteArray())
        .array();
  }

  private static byte[] header(int size) {
    ByteBuffer out = ByteBuffer.allocate(HEADER);
    out.putInt(size).putInt(0).putInt(0x02100000).put(ascii("mntrRGB XYZ "));
    for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
      out.putShort((short) part);
    }
    out.put(ascii("acsp")).position(68);
    return out.putInt(D50_X).putInt(D50_Y).putInt(D50_Z).array();
  }

  private static byte[] curve() {
    ByteBuffer out = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
    out.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
    for (int i = 0; i < CURVE_POINTS; i++) {
      double v = i / (CURVE_POINTS - 1.0);
      double linear = v <= 0.04045 ? v / 12.92 : StrictMath.pow((v + 0.055) / 1.055, 2.4);
      out.putShort((short) Math.round(linear * 65535));
    }
    return out.array();
  }

  private static byte[] xyz(double x, double y, double z) {
    return ByteBuffer.allocate(20)
        .put(ascii("XYZ "))
        .putInt(0)
        .putInt(s15(x))
        .putInt(s15(y))
        .putInt(s15(z))
        .array();
  }

  private static byte[] text(String words) {
    return ByteBuffer.allocate(9 + words.length())
        .put(ascii("text"))
        .putInt(0)
        .put(ascii(words))
        .array();
  }

  private static byte[] description(String words) {
    return ByteBuffer.allocate(12 + words.length() + 1 + 8 + 3 + 67)
        .put(ascii("desc"))
        .putInt(0)
        .putInt(words.length() + 1)
        .put(ascii(words))
        .array();
  }

  private static int s15(double value) {
    return (int) Math.round(value * 65536);
  }

  private static byte[] ascii(String words) {
    return words.getBytes(StandardCharsets.US_ASCII);
  }
}
