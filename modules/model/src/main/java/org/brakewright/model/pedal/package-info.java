/** The brake pedal. */
@NullMarked
package org.brakewright.model.pedal;

import org.jspecify.annotations.NullMarked;
