/** How fast the window starts, and how evenly it draws while masses are recorded. */
@NullMarked
package org.siltbench.demo.bench.window;

import org.jspecify.annotations.NullMarked;
