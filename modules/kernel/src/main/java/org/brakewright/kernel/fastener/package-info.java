/** Bolts and fillet welds: how a group shares a load, preload and what joins it, prying. */
@NullMarked
package org.brakewright.kernel.fastener;

import org.jspecify.annotations.NullMarked;
