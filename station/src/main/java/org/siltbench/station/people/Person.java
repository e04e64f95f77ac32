package org.siltbench.station.people;

/** Someone who was let in. */
public record Person(String initials, Right right) {}
