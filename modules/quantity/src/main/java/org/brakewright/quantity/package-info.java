/** Text with unit, fraction and tolerance to SI value and back. Knows no car. */
@NullMarked
package org.brakewright.quantity;

import org.jspecify.annotations.NullMarked;
