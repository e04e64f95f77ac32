/**
 * Label stock in millimetres: sheets and rolls, their text file, and the ruler that calibrates
 * them.
 */
@NullMarked
package org.siltbench.labels.media;

import org.jspecify.annotations.NullMarked;
