/** Whole stops followed over time: slipping wheels, locking, distance. */
@NullMarked
package org.brakewright.analysis.stop;

import org.jspecify.annotations.NullMarked;
