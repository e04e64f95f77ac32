/** The invented campaign and the run that proves the bench against its known truth. */
@NullMarked
package org.siltbench.demo;

import org.jspecify.annotations.NullMarked;
