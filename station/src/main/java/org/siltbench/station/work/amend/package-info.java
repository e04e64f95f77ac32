/** Acts that change what stands in the log, looked at before they are done. */
@NullMarked
package org.siltbench.station.work.amend;

import org.jspecify.annotations.NullMarked;
