/** The bag label: what it says and how it lays itself out on any size of label. */
@NullMarked
package org.siltbench.labels.label;

import org.jspecify.annotations.NullMarked;
