/** The clutch: pedal, master, slave, release bearing, cover and plate. */
@NullMarked
package org.brakewright.model.clutch;

import org.jspecify.annotations.NullMarked;
