/** What the shop folds and joins, laid flat. */
@NullMarked
package org.brakewright.analysis.shop;

import org.jspecify.annotations.NullMarked;
