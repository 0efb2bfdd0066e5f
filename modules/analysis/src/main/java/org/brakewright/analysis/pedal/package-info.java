/** The pedal as a lever through its stroke, and the shares of its travel. */
@NullMarked
package org.brakewright.analysis.pedal;

import org.jspecify.annotations.NullMarked;
