/** Can it be cut? Faults of an outline and its holes, all at once, as values. */
@NullMarked
package org.brakewright.drawing.outline;

import org.jspecify.annotations.NullMarked;
