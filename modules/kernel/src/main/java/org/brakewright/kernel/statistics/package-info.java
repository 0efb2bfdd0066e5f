/** Chance: even points, distributions of inputs, quantiles of results, and which input owns their spread. */
@NullMarked
package org.brakewright.kernel.statistics;

import org.jspecify.annotations.NullMarked;
