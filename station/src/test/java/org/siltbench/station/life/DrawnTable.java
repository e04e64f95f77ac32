package org.siltbench.station.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.siltbench.station.life.Outcome.Goes;
import org.siltbench.station.life.Outcome.Refuses;

/** Draws the table for the page in docs. */
final class DrawnTable {

  private final List<String> notes = new ArrayList<>();

  String markdown() {
    StringBuilder out = new StringBuilder("| act |");
    Stream.of(Status.values()).forEach(s -> out.append(' ').append(s.code()).append(" |"));
    out.append("\n| --- |").append(" --- |".repeat(Status.values().length)).append('\n');
    for (Act act : Act.values()) {
      out.append("| **").append(act.code()).append("** ").append(act.meaning()).append(" |");
      Stream.of(Status.values()).forEach(s -> out.append(' ').append(cell(s, act)).append(" |"));
      out.append('\n');
    }
    out.append('\n');
    for (int i = 0; i < notes.size(); i++) {
      out.append(i + 1).append(". ").append(notes.get(i)).append('\n');
    }
    return out.toString();
  }

  private String cell(Status status, Act act) {
    Outcome usual = Life.outcome(status, act, Role.SAMPLE);
    StringBuilder out = new StringBuilder(word(usual));
    Outcome lab = Life.outcome(status, act, Role.METHOD_BLANK);
    Outcome control = Life.outcome(status, act, Role.CONTROL);
    if (!lab.equals(usual)) {
      out.append("; lab roles: ").append(word(lab));
    }
    if (!control.equals(lab)) {
      out.append("; control: ").append(word(control));
    }
    return out.toString();
  }

  private String word(Outcome outcome) {
    if (outcome instanceof Goes goes) {
      return goes.to().code();
    }
    Refuses no = (Refuses) outcome;
    String text = "It is refused because " + no.why() + " " + no.wayOut();
    if (!notes.contains(text)) {
      notes.add(text);
    }
    return "no (" + (notes.indexOf(text) + 1) + ")";
  }

  static Set<Role> travelling() {
    return Set.of(Role.SAMPLE, Role.FIELD_BLANK, Role.TRIP_BLANK, Role.SPARE);
  }
}
