/** From the build as written to the build complete in SI, with the ledger of what was assumed. */
@NullMarked
package org.brakewright.analysis.resolve;

import org.jspecify.annotations.NullMarked;
