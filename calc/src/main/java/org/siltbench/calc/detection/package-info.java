/** Detection, quantification and reporting limits. */
@NullMarked
package org.siltbench.calc.detection;

import org.jspecify.annotations.NullMarked;
