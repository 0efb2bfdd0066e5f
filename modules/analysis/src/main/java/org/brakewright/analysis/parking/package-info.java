/** What the parking brake holds, nose up and nose down. */
@NullMarked
package org.brakewright.analysis.parking;

import org.jspecify.annotations.NullMarked;
