/**
 * A robot that works at the bench as a person would: it types commands, reads what they say, and
 * obeys with a simulated hand at the practice balance.
 */
@NullMarked
package org.siltbench.demo.robot;

import org.jspecify.annotations.NullMarked;
