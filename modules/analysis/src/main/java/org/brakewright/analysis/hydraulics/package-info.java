/** From foot to line pressure, volume demand, failed circuits. */
@NullMarked
package org.brakewright.analysis.hydraulics;

import org.jspecify.annotations.NullMarked;
