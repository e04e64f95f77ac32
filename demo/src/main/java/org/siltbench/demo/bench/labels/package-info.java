/** The labels benchmark: our labels against PDFBox drawing the same rectangles and text. */
@NullMarked
package org.siltbench.demo.bench.labels;

import org.jspecify.annotations.NullMarked;
