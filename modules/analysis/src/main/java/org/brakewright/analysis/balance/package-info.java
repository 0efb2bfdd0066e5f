/** Who locks first: adhesion, lock order, efficiency, critical deceleration; and how the balance bar stands. */
@NullMarked
package org.brakewright.analysis.balance;

import org.jspecify.annotations.NullMarked;
