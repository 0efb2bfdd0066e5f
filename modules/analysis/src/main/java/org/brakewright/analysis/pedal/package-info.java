/** The pedal: travel budget by cause. */
@NullMarked
package org.brakewright.analysis.pedal;

import org.jspecify.annotations.NullMarked;
