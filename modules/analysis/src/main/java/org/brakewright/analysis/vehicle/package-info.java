/** What the whole car does: operating points per load case. */
@NullMarked
package org.brakewright.analysis.vehicle;

import org.jspecify.annotations.NullMarked;
