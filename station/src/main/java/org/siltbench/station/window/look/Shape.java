package org.siltbench.station.window.look;

import java.util.Locale;
import javafx.scene.layout.Region;

/** The shapes of states: told apart without their colour. Drawn by the sheet {@code base.css}. */
public enum Shape {
  /** A ring: nothing there, ready. */
  RING,
  /** A wave: moving. */
  WAVE,
  /** A level bar: holding still. */
  LEVEL,
  /** A tick: done, passed, recorded. */
  TICK,
  /** A cross: refused, failed. */
  CROSS,
  /** A triangle: look here. */
  TRIANGLE,
  /** A drop: moisture. */
  DROP,
  /** A broken line: the cable is away. */
  BREAK,
  /** An arrow down: place. */
  DOWN,
  /** An arrow up: take off. */
  UP,
  /** A clock face: wait. */
  CLOCK,
  /** A person. */
  PERSON,
  /** A bag with its zip. */
  BAG,
  /** A loop: once more. */
  AGAIN,
  /** A weight with its knob. */
  WEIGHT,
  /** A dot. */
  DOT;

  /** A region of this shape, sized in em by its style class. */
  public Region node(String... classes) {
    Region region = new Region();
    region.getStyleClass().addAll("shape", "shape-" + name().toLowerCase(Locale.ROOT));
    region.getStyleClass().addAll(classes);
    region.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    region.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    return region;
  }
}
