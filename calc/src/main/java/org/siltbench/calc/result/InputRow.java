package org.siltbench.calc.result;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/**
 * One filter of a batch: a row of the table that {@code calc} reads.
 *
 * @param line where it stands in its table, from 1, for messages; 0 where there is no table
 * @param filter the filter's name, unique in the batch
 * @param role what it was for
 * @param sample the sample's name; rows of one role with the same name are one sample over several
 *     filters; empty where the filter is a sample of its own
 * @param pair a name that two duplicates share; empty for none
 * @param pairKind the kind of duplicate, for people; may be empty
 * @param pre the pre-weigh mass; null where it is missing
 * @param posts post-weigh masses, oldest first
 * @param postStated true when the one post mass is stated to be the last constant one
 * @param resolution the step the masses are displayed with; null where it is not known
 * @param volume the filtered volume; null where it is not known
 * @param volumeU its standard uncertainty, mL, zero or above; null to take the method's inputs
 * @param taken aliquot or whole bottle; null where it is not said
 * @param seen flags that were raised before the calculation; they are passed on
 * @param analysed the day of its analysis, as a word; empty where there is one day only
 * @param extras what few rows have; null for the rest
 */
public record InputRow(
    long line,
    String filter,
    RowRole role,
    String sample,
    String pair,
    String pairKind,
    @Nullable Mass pre,
    List<Mass> posts,
    boolean postStated,
    @Nullable Mass resolution,
    @Nullable Volume volume,
    @Nullable Double volumeU,
    @Nullable Taken taken,
    Set<Flag> seen,
    String analysed,
    @Nullable RowExtras extras) {

  /** Starts a row with the two things every row has. */
  public static Builder of(String filter, RowRole role) {
    return new Builder(filter, role);
  }

  /** True for sand weighed apart: its volume is the fines'. */
  boolean isSand() {
    return extras != null && extras.isSand();
  }

  /** The group the row belongs to: rows with the same key are one sample; empty for a lone row. */
  String sampleKey() {
    return sample.isEmpty() ? "" : role.word() + '\t' + sample;
  }

  /** Fills in a row step by step. */
  public static final class Builder {

    private final String filter;
    private final RowRole role;
    private long line;
    private String sample = "";
    private String pair = "";
    private String pairKind = "";
    private @Nullable Mass pre;
    private List<Mass> posts = List.of();
    private boolean postStated;
    private @Nullable Mass resolution;
    private @Nullable Volume volume;
    private @Nullable Double volumeU;
    private @Nullable Taken taken;
    private Set<Flag> seen = Set.of();
    private String analysed = "";
    private @Nullable RowExtras extras;

    private Builder(String filter, RowRole role) {
      this.filter = filter;
      this.role = role;
    }

    /** Where the row stands in its table. */
    public Builder line(long line) {
      this.line = line;
      return this;
    }

    /** The sample's name; see {@link InputRow#sample}. */
    public Builder sample(String sample) {
      this.sample = sample;
      return this;
    }

    /** The pair's name and kind. */
    public Builder pair(String pair, String pairKind) {
      this.pair = pair;
      this.pairKind = pairKind;
      return this;
    }

    /** The pre-weigh mass. */
    public Builder pre(@Nullable Mass pre) {
      this.pre = pre;
      return this;
    }

    /** Post-weigh masses for the rule to judge, oldest first. */
    public Builder posts(List<Mass> posts) {
      this.posts = List.copyOf(posts);
      this.postStated = false;
      return this;
    }

    /** The one post-weigh mass stated to be the last constant one. */
    public Builder post(Mass post) {
      this.posts = List.of(post);
      this.postStated = true;
      return this;
    }

    /** The step of the displayed masses. */
    public Builder resolution(@Nullable Mass resolution) {
      this.resolution = resolution;
      return this;
    }

    /** The filtered volume. */
    public Builder volume(@Nullable Volume volume) {
      this.volume = volume;
      return this;
    }

    /** The standard uncertainty of the volume, mL. */
    public Builder volumeU(@Nullable Double millilitres) {
      this.volumeU = millilitres;
      return this;
    }

    /** Aliquot or whole bottle. */
    public Builder taken(@Nullable Taken taken) {
      this.taken = taken;
      return this;
    }

    /** Flags raised before. */
    public Builder seen(Set<Flag> flags) {
      this.seen = flags.isEmpty() ? Set.of() : EnumSet.copyOf(flags);
      return this;
    }

    /** The day of its analysis. */
    public Builder analysed(String day) {
      this.analysed = day;
      return this;
    }

    /** What few rows have. */
    public Builder extras(@Nullable RowExtras more) {
      this.extras = more;
      return this;
    }

    /** The row. */
    public InputRow build() {
      return new InputRow(
          line,
          filter,
          role,
          sample,
          pair,
          pairKind,
          pre,
          posts,
          postStated,
          resolution,
          volume,
          volumeU,
          taken,
          seen,
          analysed,
          extras);
    }
  }
}
