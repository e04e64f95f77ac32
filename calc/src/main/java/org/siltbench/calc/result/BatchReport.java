package org.siltbench.calc.result;

import java.util.List;
import java.util.Set;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.blank.BlankTally;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;

/**
 * What the batch as a whole shows.
 *
 * @param method the method it was calculated under
 * @param rows filters in all
 * @param samples filters with a role of sample
 * @param blanks the blanks by kind
 * @param correction what was subtracted
 * @param days samples and blanks by the day of their analysis
 * @param pairs the duplicates, in the order of their first row
 * @param flags what to know about the batch
 */
public record BatchReport(
    Method method,
    long rows,
    long samples,
    BlankTally blanks,
    BlankCorrection correction,
    List<AnalyticalDays.Day> days,
    List<PairVerdict> pairs,
    Set<Flag> flags) {}
