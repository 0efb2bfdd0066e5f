/** Rates of change integrated over time with the error held. */
@NullMarked
package org.brakewright.kernel.ode;

import org.jspecify.annotations.NullMarked;
