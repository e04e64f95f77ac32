/** Drawing in millimetres on PDF pages: type, rules, tables, codes, archival metadata. */
@NullMarked
package org.siltbench.labels.draw;

import org.jspecify.annotations.NullMarked;
