/** Sheets for the pedal's arm and for its pushrods. */
@NullMarked
package org.brakewright.sheets.pedal;

import org.jspecify.annotations.NullMarked;
