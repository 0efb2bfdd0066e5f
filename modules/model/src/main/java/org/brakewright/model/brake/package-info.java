/** The wheel brakes: discs and drums. */
@NullMarked
package org.brakewright.model.brake;

import org.jspecify.annotations.NullMarked;
