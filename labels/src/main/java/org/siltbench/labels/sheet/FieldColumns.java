package org.siltbench.labels.sheet;

import java.util.ArrayList;
import java.util.List;

/** The columns of the field table: what a bench takes back, in the order people fill them in. */
public final class FieldColumns {

  /** Every column of the table to fill in. */
  public static final List<String> NAMES =
      List.of(
          "filter",
          "sample",
          "role",
          "pair",
          "pair_kind",
          "filter_order",
          "site",
          "collected",
          "filtered_from",
          "filtered_to",
          "taken",
          "portions_ml",
          "left_ml",
          "left_to",
          "volume_ml",
          "volume_u_ml",
          "rinse",
          "condition",
          "gauge_m",
          "water_c",
          "conductivity_us_cm",
          "remarks",
          "by");

  private FieldColumns() {}

  /** The rows to hand out: filter, role, order and site are known, the rest is empty. */
  public static List<List<String>> rows(FieldSheet sheet) {
    return sheet.lines().stream().map(line -> row(sheet, line)).toList();
  }

  private static List<String> row(FieldSheet sheet, FieldSheet.Line line) {
    List<String> out = new ArrayList<>();
    for (String name : NAMES) {
      out.add(
          switch (name) {
            case "filter" -> line.id();
            case "role" -> line.role();
            case "filter_order" -> Integer.toString(line.order());
            case "site" -> line.site();
            case "taken" -> sheet.wholeBottle() ? "whole" : "aliquot";
            default -> "";
          });
    }
    return out;
  }
}
