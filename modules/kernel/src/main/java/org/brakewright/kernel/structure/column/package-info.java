/** Columns that buckle, or bend because the load is off their axis. */
@NullMarked
package org.brakewright.kernel.structure.column;

import org.jspecify.annotations.NullMarked;
