/** How firm or soft the pedal may feel: force against travel, with everything uncertain at either end of its range. */
@NullMarked
package org.brakewright.analysis.feel;

import org.jspecify.annotations.NullMarked;
