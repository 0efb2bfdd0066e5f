/** Results opened to the laws behind them, step by step with their numbers; words and formulas are added at the roof. */
@NullMarked
package org.brakewright.analysis.working;

import org.jspecify.annotations.NullMarked;
