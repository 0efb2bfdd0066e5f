/** What was assumed, how far it moves the headline results, and what to measure next. */
@NullMarked
package org.brakewright.analysis.ledger;

import org.jspecify.annotations.NullMarked;
