/** The car: axle loads, wheelbase, height of the centre of gravity, tyres. */
@NullMarked
package org.brakewright.model.vehicle;

import org.jspecify.annotations.NullMarked;
