/** Fluid at rest: what drives it back out of a line, and how much of it linings take as they wear. */
@NullMarked
package org.brakewright.analysis.reservoir;

import org.jspecify.annotations.NullMarked;
