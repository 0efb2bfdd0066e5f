/** Laws of a friction clutch's release: its springs, its cover, and the liquid between master and release bearing. */
@NullMarked
package org.brakewright.kernel.clutch;

import org.jspecify.annotations.NullMarked;
