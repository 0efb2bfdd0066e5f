/** Sheets for what the shop folds of sheet and joins of tube. */
@NullMarked
package org.brakewright.sheets.shop;

import org.jspecify.annotations.NullMarked;
