/** The sheet by which a balance bar is set. */
@NullMarked
package org.brakewright.sheets.balance;

import org.jspecify.annotations.NullMarked;
