/** The parking brake: a lever, a cable, and what it acts on at the wheels. */
@NullMarked
package org.brakewright.model.parking;

import org.jspecify.annotations.NullMarked;
