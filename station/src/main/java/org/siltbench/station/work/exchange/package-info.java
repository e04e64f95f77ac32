/**
 * Field notes as people really make them: decoded, understood column by column, shown with every
 * doubt, and handed to the receipt as its own strict table. Nothing ambiguous is ever guessed.
 */
@NullMarked
package org.siltbench.station.work.exchange;

import org.jspecify.annotations.NullMarked;
