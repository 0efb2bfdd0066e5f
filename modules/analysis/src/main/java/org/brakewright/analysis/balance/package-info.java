/** Who locks first: adhesion, lock order, efficiency, critical deceleration. */
@NullMarked
package org.brakewright.analysis.balance;

import org.jspecify.annotations.NullMarked;
