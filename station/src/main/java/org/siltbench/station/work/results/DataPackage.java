package org.siltbench.station.work.results;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.siltbench.station.json.Json;

/** Describes a folder of tables after the Data Package and Table Schema specifications (v1). */
final class DataPackage {

  private final Map<String, Object> descriptor = new LinkedHashMap<>();
  private final List<Map<String, Object>> resources = new ArrayList<>();

  DataPackage(String name, String title, String created, String description) {
    descriptor.put("profile", "tabular-data-package");
    descriptor.put("name", name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-"));
    descriptor.put("title", title);
    descriptor.put("description", description);
    descriptor.put("created", created);
    descriptor.put("resources", resources);
  }

  /** Adds where the data come from. */
  DataPackage provenance(Map<String, Object> facts) {
    descriptor.put("provenance", facts);
    return this;
  }

  /** Adds a table with its bytes. */
  DataPackage add(Dataset table, byte[] csv) {
    Map<String, Object> resource = new LinkedHashMap<>();
    resource.put("profile", "tabular-data-resource");
    resource.put("name", table.name());
    resource.put("title", table.title());
    resource.put("path", table.path());
    resource.put("format", "csv");
    resource.put("mediatype", "text/csv");
    resource.put("encoding", "utf-8");
    resource.put("bytes", (long) csv.length);
    resource.put("hash", "sha256:" + sha256(csv));
    resource.put("schema", table.schema());
    resources.add(resource);
    return this;
  }

  byte[] json() {
    return (Json.write(descriptor) + '\n').getBytes(StandardCharsets.UTF_8);
  }

  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
