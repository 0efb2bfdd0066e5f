/** Pedals side by side: gaps, steps, what they sweep, and one foot on two of them. */
@NullMarked
package org.brakewright.analysis.footwell;

import org.jspecify.annotations.NullMarked;
