/** Tubes, hoses and their joints as they run through the car. */
@NullMarked
package org.brakewright.model.lines;

import org.jspecify.annotations.NullMarked;
