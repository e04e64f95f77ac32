/** The demo: an invented campaign from clean filters to results, held against its known truth. */
@NullMarked
package org.siltbench.demo.run;

import org.jspecify.annotations.NullMarked;
