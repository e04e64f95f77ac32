/** Commands that turn a batch into results, papers and a release. */
@NullMarked
package org.siltbench.station.command.results;

import org.jspecify.annotations.NullMarked;
