package org.siltbench.demo.storm;

import java.time.OffsetDateTime;

/**
 * One filtration in the field, as the notes have it.
 *
 * @param filter the bag
 * @param sample sample number
 * @param role its role as decided in the field
 * @param pair pair number for a duplicate, or empty
 * @param order its place among the filters of the sample
 * @param site where
 * @param collected when the bottle was filled
 * @param millilitres what was read off; 0 if nothing went through it
 * @param condition how the bag came back
 * @param remarks in the notes
 */
public record Taken(
    String filter,
    String sample,
    String role,
    String pair,
    int order,
    Site site,
    OffsetDateTime collected,
    int millilitres,
    String condition,
    String remarks) {

  /** The same in another condition. */
  Taken in(String other, String why) {
    return new Taken(filter, sample, role, pair, order, site, collected, millilitres, other, why);
  }
}
