/**
 * The numbers of one analytical procedure, the presets that follow published standards, and their
 * form as readable text.
 */
@NullMarked
package org.siltbench.calc.method;

import org.jspecify.annotations.NullMarked;
