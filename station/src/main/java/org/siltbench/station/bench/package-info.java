/** One opened lab folder: its ledger, its register and its clock, used together under one lock. */
@NullMarked
package org.siltbench.station.bench;

import org.jspecify.annotations.NullMarked;
